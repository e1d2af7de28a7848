#include "wasm/shortcuts.hpp"

#include "engine/base/digit.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// A reading of the aircraft on the page, or of one that is still to be chosen.
Intent log_for(const Screen& screen) {
    if (const auto* shown = std::get_if<views::AircraftView>(&screen.page)) {
        return intent::OpenPad{shown->id};
    }
    return intent::OpenLog{};
}

}  // namespace

const std::vector<Shortcut>& shortcuts() {
    static const std::vector<Shortcut> all{
        {Word::key_pages, Word::key_pages_what},
        {Word::key_log, Word::key_log_what},
        {Word::key_add, Word::key_add_what},
        {Word::key_export, Word::key_export_what},
        {Word::key_help, Word::key_help_what},
        {Word::key_move, Word::key_move_what},
        {Word::key_use, Word::key_use_what},
        {Word::key_scroll, Word::key_scroll_what},
        {Word::key_back, Word::key_back_what},
        {Word::key_digits, Word::key_digits_what},
    };
    return all;
}

std::optional<Intent> shortcut(char sign, const Screen& screen) {
    if (std::holds_alternative<WelcomePage>(screen.page)) return std::nullopt;
    switch (sign) {
        case '1':
            return intent::OpenFleet{};
        case '2':
            return intent::OpenLog{};
        case '3':
            return intent::OpenHistory{};
        case '4':
            return intent::OpenFiles{};
        case 'l':
            return log_for(screen);
        case 'a':
            return intent::OpenForm{FormKind::new_aircraft, {}};
        case 'e':
            return intent::ExportJournal{};
        case '?':
            return intent::OpenKeys{};
        default:
            return std::nullopt;
    }
}

bool is_pad_key(char sign) {
    return base::is_digit(sign) || sign == '.' || sign == '<';
}

}  // namespace twoclocks::canvas
