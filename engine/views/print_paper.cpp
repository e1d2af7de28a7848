// A paper as HTML and as CSV.
#include <algorithm>
#include <string_view>

#include "engine/base/message_args.hpp"
#include "engine/views/paper.hpp"

namespace twoclocks::views {
namespace {

using base::Region;
using base::Word;

/// Rules of the sheet: figures in the last column line up at the right; a row is never torn.
constexpr std::string_view style =
    "@page{size:auto;margin:16mm;@bottom-right{content:counter(page)\"/\"counter(pages)}}"
    "body{font-family:sans-serif;font-size:11pt;line-height:1.4;color:#000;background:#fff;"
    "max-width:178mm;margin:auto;padding:8px}"
    "h1{font-size:20pt;margin:0}h2{font-size:13pt;margin:14pt 0 4pt;break-after:avoid}"
    "p{margin:2pt 0}.plate,.notes{color:#333;font-size:9.5pt}"
    ".invented{font-weight:bold;border:2px solid #000;padding:3pt}"
    "table{border-collapse:collapse;width:100%}tr{break-inside:avoid}"
    "td{border-bottom:1px solid #999;padding:3pt 8pt 3pt 0;vertical-align:top;"
    "white-space:pre-line;min-width:18mm}td:first-child{font-weight:bold;max-width:52mm}"
    ".short{white-space:pre}td:last-child{white-space:pre;text-align:right;padding-right:0;font-"
    "variant-numeric:tabular-"
    "nums}"
    "svg{width:100%;max-height:70mm;margin:8pt 0}.notes{margin-top:14pt}";

[[nodiscard]] std::string escaped_html(std::string_view text) {
    std::string out;
    for (const char sign : text) {
        switch (sign) {
            case '&':
                out += "&amp;";
                break;
            case '<':
                out += "&lt;";
                break;
            case '>':
                out += "&gt;";
                break;
            case '"':
                out += "&quot;";
                break;
            default:
                out += sign;
        }
    }
    return out;
}

/// A figure or two, a line each, that is not to be torn apart.
[[nodiscard]] bool is_short(std::string_view cell) {
    constexpr std::size_t most = 18;
    while (!cell.empty()) {
        const std::size_t end = std::min(cell.find('\n'), cell.size());
        if (end > most) return false;
        cell.remove_prefix(std::min(end + 1, cell.size()));
    }
    return true;
}

/// Words and what is round them.
class Html {
  public:
    explicit Html(const Region& region) : region_(region) {}

    void raw(std::string_view text) { out_ += text; }

    void element(std::string_view name, std::string_view text, std::string_view of_class = {}) {
        out_ += '<';
        out_ += name;
        if (!of_class.empty()) out_ += " class=\"" + std::string{of_class} + '"';
        out_ += '>' + escaped_html(text) + "</" + std::string{name} + ">\n";
    }

    void paragraph(const base::Message& message, std::string_view of_class = {}) {
        if (message.word != Word::blank) element("p", base::say(message, region_), of_class);
    }

    void table(const std::vector<std::vector<std::string>>& rows) {
        if (rows.empty()) return;
        raw("<table>\n<tbody>\n");
        for (const std::vector<std::string>& row : rows) {
            raw("<tr>\n");
            for (const std::string& cell : row)
                element("td", cell, is_short(cell) ? "short" : "");
            raw("</tr>\n");
        }
        raw("</tbody>\n</table>\n");
    }

    [[nodiscard]] std::string take() { return std::move(out_); }

  private:
    const Region& region_;
    std::string out_;
};

/// The life box: its line, and where it is heading, in thousandths of the box.
void put_box(const LifeBoxView& box, const Region& region, Html& html) {
    if (!box.known || box.line.size() < 2) return;
    const auto point = [](const BoxPoint& one) {
        constexpr std::int32_t whole = 1'000;
        return std::to_string(one.across_permille) + ',' + std::to_string(whole - one.up_permille);
    };
    std::string line;
    for (const BoxPoint& one : box.line)
        line += (line.empty() ? "" : " ") + point(one);
    html.raw(
        "<svg viewBox=\"-4,-4,1008,1008\" role=\"img\" preserveAspectRatio=\"xMidYMid\""
        " aria-label=\"" +
        escaped_html(base::say(box.spoken, region)) + "\">\n");
    html.raw("<path d=\"M0,0H1000\" stroke=\"#1f4fa3\" stroke-width=\"8\"/>\n");
    html.raw("<path d=\"M1000,0V1000\" stroke=\"#8a5a00\" stroke-width=\"8\"/>\n");
    html.raw("<path d=\"M0,0V1000H1000\" fill=\"none\" stroke=\"#999\" stroke-width=\"2\"/>\n");
    html.raw("<polyline fill=\"none\" stroke=\"#000\" stroke-width=\"5\" points=\"" + line +
             "\"/>\n");
    if (box.fan_known)
        html.raw(
            "<polyline fill=\"none\" stroke=\"#000\" stroke-width=\"4\""
            " stroke-dasharray=\"14\" points=\"" +
            point(box.line.back()) + ' ' + point(box.likely) + "\"/>\n");
    html.raw("</svg>\n");
    html.paragraph(box.spoken, "plate");
}

/// What stands between the digits of a figure, whatever the region.
[[nodiscard]] std::string without_groups(std::string text) {
    for (const std::string_view sign : {"\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x99", "'"})
        for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign))
            text.erase(at, sign.size());
    return text;
}

/// An amount below or above zero, its currency behind a space that does not break.
[[nodiscard]] bool is_figure(std::string_view text) {
    constexpr std::string_view space = "\xC2\xA0";
    constexpr std::size_t code_letters = 3;
    const std::size_t end = text.rfind(space);
    if (end != std::string_view::npos) {
        const std::string_view code = text.substr(end + space.size());
        const bool is_code =
            code.size() == code_letters && std::all_of(code.begin(), code.end(), [](char sign) {
                return sign >= 'A' && sign <= 'Z';
            });
        if (is_code) text = text.substr(0, end);
    }
    const std::string plain = without_groups(std::string{text});
    return plain.size() > 1 && (plain.front() == '-' || plain.front() == '+') &&
           std::all_of(plain.begin() + 1, plain.end(), [](char sign) {
               return (sign >= '0' && sign <= '9') || sign == '.' || sign == ',';
           });
}

/// Text that a spreadsheet would take for a formula begins with an apostrophe; a figure does not.
[[nodiscard]] std::string neutral(const std::string& text) {
    constexpr std::string_view runs = "=+-@\t\r";
    const bool is_plain = text.empty() || runs.find(text.front()) == std::string_view::npos;
    return is_plain || is_figure(text) ? text : '\'' + text;
}

[[nodiscard]] std::string csv_cell(const std::string& text) {
    const std::string plain = neutral(text);
    if (plain.find_first_of(",;\"\r\n") == std::string::npos) return plain;
    std::string out{'"'};
    for (const char sign : plain) {
        if (sign == '"') out += '"';
        out += sign;
    }
    return out + '"';
}

}  // namespace

std::string print_html(const Paper& paper, const Region& region) {
    Html html{region};
    const std::string title = base::say(paper.title, region);
    html.raw("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.raw("<meta name=\"viewport\" content=\"width=device-width\">\n");
    html.element("title", title);
    html.raw("<style>");
    html.raw(style);
    html.raw("</style>\n</head>\n<body>\n");
    html.element("h1", title);
    if (!paper.plate.empty()) html.element("p", paper.plate, "plate");
    html.element("p", paper.as_of, "plate");
    if (paper.is_invented) html.paragraph({Word::caution_invented, {}}, "invented");
    if (paper.box) put_box(*paper.box, region, html);
    for (const PaperBlock& block : paper.blocks) {
        if (block.title.word != Word::blank) html.element("h2", base::say(block.title, region));
        for (const base::Message& line : block.lines)
            html.paragraph(line);
        html.table(block.rows);
    }
    html.raw("<div class=\"notes\">\n");
    for (const base::Message& note : paper.notes)
        html.paragraph(note);
    html.raw("</div>\n</body>\n</html>\n");
    return html.take();
}

std::string print_csv(const Paper& paper, const Region& region) {
    std::string out;
    const auto line = [&](const std::string& text) {
        if (!text.empty()) out += csv_cell(text) + "\r\n";
    };
    const auto said = [&](const base::Message& message) {
        if (message.word != Word::blank) line(base::say(message, region));
    };
    said(paper.title);
    line(paper.plate);
    line(paper.as_of);
    if (paper.is_invented) said({Word::caution_invented, {}});
    for (const PaperBlock& block : paper.blocks) {
        said(block.title);
        for (const base::Message& each : block.lines)
            said(each);
        for (const std::vector<std::string>& row : block.rows) {
            for (std::size_t place = 0; place < row.size(); ++place)
                out += (place == 0 ? "" : ",") + csv_cell(row[place]);
            out += "\r\n";
        }
    }
    for (const base::Message& note : paper.notes)
        said(note);
    return out;
}

}  // namespace twoclocks::views
