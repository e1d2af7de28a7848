// Something happened, and the inspection that signs it.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_parts.hpp"

#include <algorithm>
#include <array>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"
#include "engine/limits/due.hpp"
#include "engine/timeline/events.hpp"
#include "engine/views/record_care.hpp"

namespace twoclocks::canvas {
namespace {

using base::FlightTime;
using base::Id;
using base::Trouble;
using base::Word;
using timeline::EventState;
using timeline::EventSubject;

/// So many parts one record of this form can name.
constexpr std::size_t most_parts = 6;

constexpr std::array part_fields{"part-1", "part-2", "part-3", "part-4", "part-5", "part-6"};

static_assert(part_fields.size() == most_parts);

void check_day(const std::optional<base::Date>& on, base::Date today, FieldReader& reader) {
    if (on && *on > today) complain(reader, "date", Trouble::entry_day_ahead, {base::day_arg(*on)});
}

[[nodiscard]] std::string total_text(const timeline::AircraftState& state) {
    const std::optional<FlightTime> total = limits::total_time(state);
    return total ? tenths_text(*total) : std::string{};
}

[[nodiscard]] std::vector<Word> event_words() {
    std::vector<Word> out;
    for (auto kind = static_cast<std::int32_t>(facts::EventKind::hard_landing);
         kind <= static_cast<std::int32_t>(facts::EventKind::other);
         ++kind)
        out.push_back(views::event_word(static_cast<facts::EventKind>(kind)));
    return out;
}

/// A list of the parts aboard for each that may be named.
void add_part_fields(Form& form, const std::vector<timeline::PartState>& parts) {
    const std::size_t fields = std::min(parts.size(), most_parts);
    for (std::size_t field = 0; field < fields; ++field) {
        FieldView choice =
            make_choice(part_fields[field], Word::field_hurt_part, {Word::hurt_none}, 0);
        choice.label = {Word::record_of_two,
                        {base::word_arg(Word::field_hurt_part),
                         base::whole_arg(static_cast<std::int64_t>(field) + 1)}};
        for (const timeline::PartState& part : parts) {
            choice.options.push_back({Word::as_told, {base::text_arg(part_label(part))}});
        }
        form.fields.push_back(std::move(choice));
    }
}

/// What one choice of the form signs for: subjects, and what the work is about.
struct Choice {
    std::vector<const EventSubject*> subjects;
    std::vector<Id> about;
};

/// The aircraft the part is on, which may be another than it was on when it happened.
[[nodiscard]] Id host_of(const EventSubject& part, const FormContext& context) {
    const std::vector<Id> hosts = timeline::may_be_aboard(context.journal, part.id, context.today);
    return hosts.empty() ? Id{} : hosts.front();
}

/// Work names the aircraft first; but to name one that stays open would sign for it.
[[nodiscard]] std::vector<Id> about_of(const EventState& event,
                                       const std::vector<const EventSubject*>& signs,
                                       const FormContext& context) {
    std::vector<Id> out;
    if (!signs.front()->is_part) {
        out.push_back(signs.front()->id);
    } else {
        const Id host = host_of(*signs.front(), context);
        const bool stays_open = std::any_of(
            event.subjects.begin(), event.subjects.end(), [&](const EventSubject& subject) {
                return subject.open && subject.id == host;
            });
        if (!host.empty() && !stays_open) out.push_back(host);
    }
    for (const EventSubject* subject : signs) {
        if (std::find(out.begin(), out.end(), subject->id) == out.end()) out.push_back(subject->id);
    }
    return out;
}

/// All that is open at once, then each alone; none when nothing is open.
[[nodiscard]] std::vector<Choice> choices_of(const EventState& event, const FormContext& context) {
    std::vector<Choice> out;
    Choice all;
    for (const EventSubject& subject : event.subjects) {
        if (subject.open) all.subjects.push_back(&subject);
    }
    if (all.subjects.empty()) return out;
    out.push_back(all);
    if (all.subjects.size() > 1) {
        for (const EventSubject* subject : all.subjects)
            out.push_back({{subject}, {}});
    }
    for (Choice& choice : out)
        choice.about = about_of(event, choice.subjects, context);
    return out;
}

[[nodiscard]] base::Message name_of_subject(const EventSubject& subject) {
    if (subject.name.empty()) return {Word::event_no_name, {}};
    return {Word::as_told, {base::text_arg(subject.name)}};
}

/// The total of the aircraft that the first choice names.
[[nodiscard]] std::string total_of(const Choice& choice, const FormContext& context) {
    return total_text(timeline::replay(context.journal, choice.about.front(), context.today));
}

}  // namespace

void make_event(Form& form, const FormContext& context) {
    form.title = Word::form_event;
    form.intro = Word::form_event_intro;
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    form.fields.push_back(make_choice("happened", Word::field_happened, event_words(), 0));
    field("date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed);
    field("total",
          Word::field_total,
          FieldKind::hours,
          context.aircraft == nullptr ? std::string{} : total_text(*context.aircraft),
          Need::optional);
    field("found", Word::field_found, FieldKind::text, {}, Need::optional);
    add_part_fields(form, timeline::parts_of(context.journal, form.aircraft, context.today));
    field("source", Word::field_inspect_source, FieldKind::text, {}, Need::optional);
    field("revision", Word::field_revision, FieldKind::text, {}, Need::optional);
}

Facts take_event(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::Event event;
    event.happened = static_cast<facts::EventKind>(reader.choice("happened"));
    const auto on = reader.date("date");
    event.total = reader.hours("total");
    event.found = reader.text("found");
    event.source = reader.text("source");
    event.revision = reader.text("revision");
    check_day(on, context.today, reader);
    if (!reader.sound()) return {};
    const auto parts = timeline::parts_of(context.journal, form.aircraft, context.today);
    std::vector<Id> about{form.aircraft};
    for (const char* id : part_fields) {
        const std::int32_t chosen = reader.choice(id);
        if (chosen <= 0 || static_cast<std::size_t>(chosen) > parts.size()) continue;
        const Id part = parts[static_cast<std::size_t>(chosen) - 1].id;
        if (std::find(about.begin(), about.end(), part) == about.end()) about.push_back(part);
    }
    facts::Body body{*on, std::move(about), std::move(event), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

void make_sign_event(Form& form, const FormContext& context) {
    form.title = Word::form_sign_event;
    form.intro = Word::form_sign_event_intro;
    const auto event = timeline::find_event(context.journal, form.subject, context.today);
    const std::vector<Choice> choices = event ? choices_of(*event, context) : std::vector<Choice>{};
    if (!choices.empty()) form.aircraft = choices.front().about.front();
    if (choices.size() > 1) {
        FieldView choice = make_choice("inspected", Word::field_inspected, {Word::signs_all}, 0);
        for (std::size_t at = 1; at < choices.size(); ++at)
            choice.options.push_back(name_of_subject(*choices[at].subjects.front()));
        form.fields.push_back(std::move(choice));
    }
    const auto field =
        [&](const char* id, Word label, FieldKind kind, std::string text, Need need) {
            form.fields.push_back(make_field(id, label, kind, std::move(text), need));
        };
    const Word happened = event ? views::event_word(event->event.happened) : Word::event_other;
    field("what",
          Word::field_what,
          FieldKind::text,
          base::say({Word::event_inspection, {base::word_arg(happened)}}, {}),
          Need::needed);
    field("date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed);
    field("total",
          Word::field_total_at_work,
          FieldKind::hours,
          choices.empty() ? std::string{} : total_of(choices.front(), context),
          Need::optional);
    field("done_by", Word::field_done_by, FieldKind::text, {}, Need::needed);
    field("place", Word::field_place, FieldKind::text, {}, Need::optional);
    field("reference", Word::field_reference, FieldKind::text, {}, Need::optional);
}

Facts take_sign_event(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::WorkDone work;
    work.what = reader.text("what");
    work.total = reader.hours("total");
    work.done_by = reader.text("done_by");
    work.place = reader.text("place");
    work.reference = reader.text("reference");
    const auto on = reader.date("date");
    check_day(on, context.today, reader);
    const auto event = timeline::find_event(context.journal, form.subject, context.today);
    const std::vector<Choice> choices = event ? choices_of(*event, context) : std::vector<Choice>{};
    const auto chosen = static_cast<std::size_t>(reader.choice("inspected"));
    if (chosen >= choices.size()) {
        complain(reader, "inspected", Trouble::form_nothing_open);
    } else if (on && *on < event->on) {
        complain(reader, "date", Trouble::form_before_event, {base::day_arg(event->on)});
    }
    if (!reader.sound()) return {};
    work.renews = {{form.subject, {}}};
    facts::Body body{*on, choices[chosen].about, std::move(work), {}};
    return {signer.sign(signer.new_id(), std::move(body), context.journal)};
}

}  // namespace twoclocks::canvas
