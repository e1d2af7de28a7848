#include "wasm/frame.hpp"

#include "wasm/widgets/chrome.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;

template <class... Each>
struct Cases : Each... {
    using Each::operator()...;
};
template <class... Each>
Cases(Each...) -> Cases<Each...>;

Message title_of(const Page& page) {
    return std::visit(
        Cases{[](const WelcomePage&) {
                  return Message{Word::product_name, {}};
              },
              [](const views::FleetView&) {
                  return Message{Word::tab_fleet, {}};
              },
              [](const views::AircraftView& view) {
                  return Message{Word::as_told, {base::text_arg(view.registration)}};
              },
              [](const LogPage& log) {
                  if (!log.pad) return Message{Word::title_log, {}};
                  return Message{Word::as_told, {base::text_arg(log.pad->view.registration)}};
              },
              [](const views::HistoryView& view) {
                  if (view.registration.empty()) return Message{Word::tab_history, {}};
                  return Message{Word::title_history_of, {base::text_arg(view.registration)}};
              },
              [](const FilesPage&) {
                  return Message{Word::tab_files, {}};
              },
              [](const FormPage& form) { return form.title; }},
        page);
}

Answer draw_page(Ui& ui, const Rect& area, const Page& page) {
    return std::visit(
        Cases{[&](const WelcomePage&) { return welcome_panel(ui, area); },
              [&](const views::FleetView& view) { return fleet_panel(ui, area, view); },
              [&](const views::AircraftView& view) { return aircraft_panel(ui, area, view); },
              [&](const LogPage& view) { return log_panel(ui, area, view); },
              [&](const views::HistoryView& view) { return history_panel(ui, area, view); },
              [&](const FilesPage& view) { return files_panel(ui, area, view); },
              [&](const FormPage& view) { return form_panel(ui, area, view); }},
        page);
}

Answer draw_sheet(Ui& ui, const Screen& screen) {
    if (const auto* why = std::get_if<views::Why>(&screen.sheet)) return why_sheet(ui, *why);
    if (const auto* record = std::get_if<RecordSheet>(&screen.sheet))
        return record_sheet(ui, *record);
    return {};
}

/// How the page is divided into what stands still and what scrolls.
struct Parts {
    Rect tabs;
    Rect page;
    bool rail{false};
    bool bar{false};
};

bool is_pad(const Screen& screen) {
    const auto* log = std::get_if<LogPage>(&screen.page);
    return log != nullptr && log->pad.has_value();
}

Parts divide(const Ui& ui, const Screen& screen) {
    const PageFrame& frame = ui.frame();
    Parts parts;
    parts.page = frame.whole;
    parts.page.top += frame.safe_top;
    if (screen.tab == Tab::none) {
        parts.page.bottom -= frame.safe_bottom;
        return parts;
    }
    if (frame.wide()) {
        parts.rail = true;
        parts.tabs = {
            frame.whole.left, frame.whole.top, frame.whole.left + page::rail, frame.whole.bottom};
        parts.page.left = parts.tabs.right;
        parts.page.bottom -= frame.safe_bottom;
        return parts;
    }
    const bool crowded = is_pad(screen) && frame.whole.height() < page::pad_needs;
    parts.bar = !frame.low() && !crowded;
    const float height = parts.bar ? target::tab_bar : 0;
    parts.page.bottom -= height + frame.safe_bottom;
    parts.tabs = {frame.whole.left, parts.page.bottom, frame.whole.right, frame.whole.bottom};
    return parts;
}

Answer draw_tabs(Ui& ui, const Parts& parts, Tab current) {
    std::optional<Tab> pressed;
    if (parts.rail) pressed = tab_rail(ui, parts.tabs, current);
    if (parts.bar) pressed = tab_bar(ui, parts.tabs, current);
    if (!pressed) return {};
    switch (*pressed) {
        case Tab::fleet:
            return intent::OpenFleet{};
        case Tab::log:
            return intent::OpenLog{};
        case Tab::history:
            return intent::OpenHistory{};
        case Tab::files:
            return intent::OpenFiles{};
        case Tab::none:
            break;
    }
    return {};
}

/// How wide the words of a page may run.
float width_of(const Ui& ui, const Page& page) {
    const bool wide = ui.frame().wide();
    const bool roomy = ui.frame().whole.width() >= page::two_columns_from + 2 * space::base;
    return std::visit(
        Cases{[](const WelcomePage&) { return page::reading_most; },
              [](const views::FleetView& view) {
                  return view.cards.empty() ? page::reading_most : page::spread_most;
              },
              [&](const views::AircraftView&) {
                  return wide ? page::spread_most : page::column_most;
              },
              [&](const LogPage& log) {
                  if (!log.pad) return page::column_most;
                  return roomy ? page::pad_most : page::reading_most;
              },
              [](const views::HistoryView&) { return page::column_most; },
              [&](const FilesPage&) { return wide ? page::spread_most : page::column_most; },
              [](const FormPage&) { return page::reading_most; }},
        page);
}

/// Pages a tab leads to straight: the tabs are their way out.
bool is_root(const Page& page) {
    if (const auto* log = std::get_if<LogPage>(&page)) return !log->pad;
    if (const auto* all = std::get_if<views::HistoryView>(&page)) return all->registration.empty();
    return std::holds_alternative<views::FleetView>(page) ||
           std::holds_alternative<FilesPage>(page);
}

/// Title, way back and state of the app. Returns what was pressed; the column ends below it.
Answer draw_header(Ui& ui, const Screen& screen, Rect& area) {
    if (std::holds_alternative<WelcomePage>(screen.page)) return {};
    const float width = std::min(area.width() - 2 * space::base, ui.page_width());
    const float left = area.left + (area.width() - width) / 2;
    Answer answer;
    area.top = ui.inside({left, area.top, left + width, area.bottom}, [&] {
        const bool leads_back = screen.can_go_back && !is_root(screen.page);
        const bool back =
            page_header(ui, {ui.say(title_of(screen.page)), ui.say(screen.status), leads_back});
        if (back) answer = intent::Back{};
        if (screen.read_only) {
            paragraph(ui, Type::body_strong, Tone::ink, ui.say(Word::read_only_note));
            ui.gap(space::small);
        }
    });
    return answer;
}

Answer draw_notices(Ui& ui, const Screen& screen, Rect& area) {
    if (screen.notices.empty()) return {};
    const float width = std::min(area.width() - 2 * space::base, page::reading_most);
    const float left = area.left + (area.width() - width) / 2;
    const NoticePress press = notice_stack(
        ui, screen.notices, {left, area.top, left + width, area.bottom - space::small});
    area.bottom -= press.height + space::small;
    if (press.dismissed) return intent::DismissNotice{};
    if (press.action < 0) return {};
    return screen.notices[static_cast<std::uint32_t>(press.action)].action;
}

Answer first_of(std::initializer_list<Answer> answers) {
    for (const Answer& answer : answers) {
        if (answer) return answer;
    }
    return {};
}

}  // namespace

std::string page_key(const Screen& screen, const base::Region& region) {
    // A file that was chosen makes another page of it: what it would change stands at the top.
    const auto* files = std::get_if<FilesPage>(&screen.page);
    const bool previews = files != nullptr && files->preview;
    const std::string key = std::to_string(screen.page.index()) + (previews ? "?" : "");
    return key + base::say(title_of(screen.page), region);
}

Answer draw_screen(Ui& ui, const Screen& screen) {
    const Parts parts = divide(ui, screen);
    Rect area = parts.page;
    ui.set_revision(screen.revision);
    ui.set_page_width(width_of(ui, screen.page));
    ui.pen().fill(ui.frame().whole, Tone::paper);
    const Answer header = draw_header(ui, screen, area);
    const Answer notice = draw_notices(ui, screen, area);
    const Answer page = draw_page(ui, area, screen.page);
    const Answer tab = draw_tabs(ui, parts, screen.tab);
    const Answer sheet = draw_sheet(ui, screen);
    return first_of({sheet, notice, header, page, tab});
}

}  // namespace twoclocks::canvas
