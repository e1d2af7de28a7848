// Every kind of field in every state, entries that came back after a reload, and what was just
// saved.
#include "tests/support/sample_screens.hpp"
#include "wasm/app/specimen_fields.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Message;
using base::Word;

const Message yesterday_is_back{Word::draft_back, {base::word_arg(Word::pad_yesterday)}};

}  // namespace

Screen fields() {
    Screen screen = form();
    auto& page = std::get<FormPage>(screen.page);
    page.title = {Word::specimen_fields, {}};
    page.intro = {Word::specimen_fields_intro, {}};
    page.fields = specimen_fields(day_of(day_3_may_2026));
    page.can_clear = true;
    return screen;
}

Screen returned_draft() {
    Screen screen = form();
    auto& page = std::get<FormPage>(screen.page);
    page.draft_note = yesterday_is_back;
    page.can_clear = true;
    return screen;
}

Screen returned_pad() {
    Screen screen = pad();
    auto& page = *std::get<LogPage>(screen.page).pad;
    page.draft_note = yesterday_is_back;
    page.can_clear = true;
    page.days = {{{Word::chip_yesterday, {}}, "2026-05-19"}};
    return screen;
}

Screen saved_notice() {
    Screen screen = aircraft();
    Notice saved;
    saved.text = told("Saved: 1,236.8 h for ISLE-1.");
    saved.action = intent::WithdrawSaved{{id_of(31)}};
    saved.action_label = {Word::saved_undo, {}};
    screen.notices = {saved};
    return screen;
}

}  // namespace twoclocks::canvas::samples
