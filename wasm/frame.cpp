#include "wasm/frame.hpp"

#include "wasm/pages.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/chrome.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>

namespace twoclocks::canvas {
namespace {

using base::Word;

Answer draw_sheet(Ui& ui, const Screen& screen) {
    if (const auto* why = std::get_if<views::Why>(&screen.sheet)) return why_sheet(ui, *why);
    if (const auto* record = std::get_if<RecordSheet>(&screen.sheet))
        return record_sheet(ui, *record);
    if (const auto* keys = std::get_if<KeysSheet>(&screen.sheet)) return keys_sheet(ui, *keys);
    return {};
}

/// How the page is divided into what stands still and what scrolls.
struct Parts {
    Rect tabs;
    Rect list;  // left of the page, empty when the page stands alone
    Rect page;
    bool rail{false};
    bool bar{false};
};

bool is_pad(const Screen& screen) {
    const auto* log = std::get_if<LogPage>(&screen.page);
    return log != nullptr && log->pad.has_value();
}

void give_list_room(Parts& parts) {
    const float width =
        std::clamp(parts.page.width() * page::list_share, page::list_least, page::list_most);
    parts.list = parts.page;
    parts.list.right = parts.list.left + width;
    parts.page.left = parts.list.right;
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
    const bool lying = frame.low() && frame.whole.width() > frame.whole.height();
    if (frame.wide() || lying) {
        const bool tight = frame.whole.width() < page::rail_tight_below;
        const float rail = lying ? page::rail_low : tight ? page::rail_tight : page::rail;
        parts.rail = true;
        parts.tabs = {
            frame.whole.left, frame.whole.top, frame.whole.left + rail, frame.whole.bottom};
        parts.page.left = parts.tabs.right;
        parts.page.bottom -= frame.safe_bottom;
        if (screen.beside && frame.wide()) give_list_room(parts);
        return parts;
    }
    const bool crowded = is_pad(screen) && frame.whole.height() < page::pad_needs;
    parts.bar = !crowded;
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

/// One pane: which page it shows, and how its header goes.
struct Pane {
    const Page& page;
    Rect area;
    std::string status;
    bool leads_back{false};
    std::int32_t level{1};
    ListPane list;
};

Answer draw_header(Ui& ui, const Pane& pane, Rect& area, bool read_only) {
    if (std::holds_alternative<WelcomePage>(pane.page)) return {};
    Answer answer;
    area.top = ui.inside(column_in(ui, area), [&] {
        const HeaderSpec header{
            ui.say(title_of(pane.page)), pane.status, pane.leads_back, pane.level};
        if (page_header(ui, header)) answer = intent::Back{};
        if (!read_only) return;
        paragraph(ui, Type::body_strong, Tone::ink, ui.say(Word::read_only_note));
        ui.gap(space::small);
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

/// The list at the left of a page that was chosen from it.
Answer draw_list(Ui& ui, const Screen& screen, const Rect& area) {
    const Page& list = screen.beside->list;
    const bool page_has_title = !std::holds_alternative<NothingChosenPage>(screen.page);
    const Pane pane{list,
                    area,
                    {},
                    screen.can_go_back && !is_root(list),
                    page_has_title ? 2 : 1,
                    {true, screen.beside->chosen}};
    ui.set_page_width(area.width());
    Rect inner = area;
    const Answer header = draw_header(ui, pane, inner, false);
    const Answer page = draw_page(ui, inner, list, pane.list);
    ui.pen().line(
        {area.right - 0.5F, area.top}, {area.right - 0.5F, area.bottom}, Tone::line, shape::stroke);
    return first_of({header, page});
}

/// The page itself, with its notices.
Answer draw_main(Ui& ui, const Screen& screen, const Rect& area) {
    const bool beside_list = screen.beside && !std::holds_alternative<FormPage>(screen.page) &&
                             !std::holds_alternative<ChecksPage>(screen.page);
    const Pane pane{screen.page,
                    area,
                    ui.say(screen.status),
                    screen.can_go_back && !is_root(screen.page) && !beside_list,
                    1,
                    {}};
    ui.set_page_width(width_of(screen.page, area.width()));
    if (screen.beside) ui.set_page_lean(page::lean_left);
    Rect inner = area;
    const Answer header = draw_header(ui, pane, inner, screen.read_only);
    const Answer notice = draw_notices(ui, screen, inner);
    const Answer page = draw_page(ui, inner, screen.page, pane.list);
    return first_of({notice, header, page});
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
    ui.set_revision(screen.revision);
    ui.pen().fill(ui.frame().whole, Tone::paper);
    const Answer list = parts.list.width() > 0 ? draw_list(ui, screen, parts.list) : Answer{};
    const Answer page = draw_main(ui, screen, parts.page);
    const Answer tab = draw_tabs(ui, parts, screen.tab);
    const Answer sheet = draw_sheet(ui, screen);
    return first_of({sheet, page, list, tab});
}

}  // namespace twoclocks::canvas
