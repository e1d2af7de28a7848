#include "wasm/widgets/history_row.hpp"

#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

struct Lines {
    std::string date;
    std::string flags;
    std::string what;
    std::string detail;
    std::string told_by;
    bool flags_below{false};
};

Lines lines_of(Ui& ui, const views::HistoryRow& row, float width) {
    Lines lines;
    lines.date = ui.say(row.date);
    lines.flags = record_flags(ui, row);
    lines.what = ui.say(row.what);
    lines.detail = ui.say(row.detail);
    lines.told_by = ui.say(row.told_by);
    const float beside = ui.pen().width(Type::small, lines.date) + space::base +
                         ui.pen().width(Type::small_strong, lines.flags);
    lines.flags_below = !lines.flags.empty() && beside > width;
    return lines;
}

void struck_paragraph(Ui& ui, Type type, Tone tone, const std::string& text, bool struck) {
    Pen& pen = ui.pen();
    float y = ui.y();
    quiet_paragraph(ui, type, tone, text);
    if (!struck) return;
    for (const std::string_view line : pen.wrap(type, text, ui.width())) {
        const float middle = y + pen.line(type) / 2 + 1;
        pen.line({ui.left(), middle}, {ui.left() + pen.width(type, line), middle}, tone, 1.5F);
        y += pen.line(type);
    }
}

void draw_lines(Ui& ui, const views::HistoryRow& row, const Lines& lines) {
    Pen& pen = ui.pen();
    const float top = ui.y();
    quiet_paragraph(ui, Type::small, Tone::soft, lines.date);
    if (lines.flags_below) {
        quiet_paragraph(ui, Type::small_strong, Tone::ink, lines.flags);
    } else {
        pen.text_right(Type::small_strong, Tone::ink, {ui.column().right(), top}, lines.flags);
    }
    const bool gone = row.corrected || row.withdrawn;
    struck_paragraph(ui, Type::body_strong, gone ? Tone::soft : Tone::ink, lines.what, gone);
    quiet_paragraph(ui, Type::body, Tone::ink, lines.detail);
    quiet_paragraph(ui, Type::small, Tone::soft, lines.told_by);
}

}  // namespace

std::string record_flags(Ui& ui, const views::HistoryRow& row) {
    std::string flags;
    const auto add = [&](bool is, Word word) {
        if (!is) return;
        if (!flags.empty()) flags += ", ";
        flags += ui.say(word);
    };
    add(row.corrected, Word::flag_corrected);
    add(row.withdrawn, Word::flag_withdrawn);
    add(row.questioned, Word::flag_questioned);
    add(row.unknown_kind, Word::flag_newer);
    return flags;
}

float history_row_height(Ui& ui, const views::HistoryRow& row, float width) {
    const float inner = width - 2 * space::base;
    const Lines lines = lines_of(ui, row, inner);
    const float words = ui.pen().line(Type::small) * (lines.flags_below ? 2.0F : 1.0F) +
                        height_of(ui, Type::body_strong, lines.what, inner) +
                        height_of(ui, Type::body, lines.detail, inner) +
                        height_of(ui, Type::small, lines.told_by, inner);
    return std::max(target::least, words + 2 * space::middle);
}

bool history_row(Ui& ui, const views::HistoryRow& row, const ListItem& item, const Rect& box) {
    const std::string id = "record-" + base::print_id(row.fact);
    const Lines lines = lines_of(ui, row, box.width() - 2 * space::base);
    list_item_ground(ui, item, id, box);
    ui.inside({box.left + space::base, box.top + space::middle, box.right - space::base, 0},
              [&] { draw_lines(ui, row, lines); });
    const std::string what = lines.flags.empty() ? lines.what : lines.what + ", " + lines.flags;
    const std::string name = ui.say({Word::spoken_row,
                                     {base::text_arg(lines.date),
                                      base::text_arg(what),
                                      base::text_arg(lines.detail + ". " + lines.told_by)}});
    return list_item(ui, item, id, name, box);
}

}  // namespace twoclocks::canvas
