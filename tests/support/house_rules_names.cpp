// The rules that look for words: what the engine may not name, what it must say of its functions,
// and where sentences and colours may stand.
#include "tests/support/house_rules.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

namespace twoclocks::support {
namespace {

/// A name that may not stand in code; one that ends in * is the beginning of names.
struct Ban {
    std::string_view token;
    std::string_view remedy;
    std::string_view allowed;  // beginnings of paths, each with a space behind it
};

constexpr std::string_view clocks = "take `today` or a wall time as an argument";
constexpr std::string_view printing = "return data or text; the caller reads and prints";
constexpr std::string_view regions = "return a Message; base/region writes it";
constexpr std::string_view orders =
    "use std::map or a sorted vector: their order is the same everywhere";
constexpr std::string_view reals = "use FlightTime, Count or another whole quantity";
constexpr std::string_view canvas = "the engine knows no canvas and no browser";
constexpr std::string_view own_draws =
    "draw with std::mt19937_64 and our own transforms, from a given seed";
constexpr std::string_view real_rooms =
    "engine/base/real. engine/forecast/ engine/work/ engine/plan/ engine/budget/ ";
constexpr std::string_view random_rooms = "engine/forecast/ engine/plan/ engine/budget/ ";

constexpr auto bans = std::to_array<Ban>({
    {"::now", clocks, ""},
    {"std::time", clocks, ""},
    {"system_clock", clocks, ""},
    {"steady_clock", clocks, ""},
    {"high_resolution_clock", clocks, ""},
    {"localtime", clocks, ""},
    {"gmtime", clocks, ""},
    {"emscripten_get_now", clocks, ""},
    {"emscripten_date_now", clocks, ""},
    {"<ctime>", clocks, ""},
    {"<iostream>", printing, ""},
    {"<fstream>", printing, ""},
    {"<filesystem>", printing, ""},
    {"<cstdio>", printing, ""},
    {"printf", printing, ""},
    {"fprintf", printing, ""},
    {"snprintf", regions, ""},
    {"<sstream>", regions, ""},
    {"<iomanip>", regions, ""},
    {"<locale>", regions, ""},
    {"locale", regions, ""},
    {"setlocale", regions, ""},
    {"strtod", regions, ""},
    {"stod", regions, ""},
    {"<random>", own_draws, random_rooms},
    {"mt19937_64", own_draws, random_rooms},
    {"random_device", own_draws, ""},
    {"rand", own_draws, ""},
    {"normal_distribution", own_draws, ""},
    {"uniform_real_distribution", own_draws, ""},
    {"uniform_int_distribution", own_draws, ""},
    {"unordered_*", orders, ""},
    {"float", reals, real_rooms},
    {"double", reals, real_rooms},
    {"imgui*", canvas, ""},
    {"ImGui*", canvas, ""},
    {"emscripten*", canvas, ""},
    {"EMSCRIPTEN*", canvas, ""},
});

/// Functions of <cmath> whose last bit differs from build to build, or that hide a rounding.
constexpr std::array<std::string_view, 37> libm{
    "exp",   "exp2",      "expm1",     "log",  "log2",  "log10", "log1p",  "pow",
    "cbrt",  "hypot",     "sin",       "cos",  "tan",   "asin",  "acos",   "atan",
    "atan2", "sinh",      "cosh",      "tanh", "erf",   "erfc",  "tgamma", "lgamma",
    "fma",   "fmod",      "floor",     "ceil", "trunc", "round", "rint",   "lround",
    "lrint", "nearbyint", "remainder", "modf", "ldexp"};

/// Where `token` stands on its own, not inside a longer name; npos without one.
std::size_t find_token(std::string_view line, std::string_view token, std::size_t from = 0) {
    const bool open_ended = token.ends_with('*');
    if (open_ended) token.remove_suffix(1);
    for (std::size_t at = line.find(token, from); at != std::string_view::npos;
         at = line.find(token, at + 1)) {
        const std::size_t end = at + token.size();
        const bool starts = at == 0 || !is_name_sign(token.front()) || !is_name_sign(line[at - 1]);
        const bool ends = open_ended || end == line.size() || !is_name_sign(token.back()) ||
                          !is_name_sign(line[end]);
        if (starts && ends) return at;
    }
    return std::string_view::npos;
}

/// Code, with the path back in its place when the line is an include.
std::string_view code_or_path(const SourceText& file, std::size_t index) {
    return file.code[index].starts_with("#include") ? file.raw[index] : file.code[index];
}

bool in_canvas(std::string_view path) {
    return path.starts_with("wasm/");
}

/// The canvas may draw, print and use reals, but it has no clock either: the page's time comes in.
bool holds_for(const Ban& ban, std::string_view path) {
    if (in_canvas(path)) return ban.remedy == clocks;
    for (std::string_view left = ban.allowed; !left.empty();) {
        const std::size_t space = left.find(' ');
        if (path.starts_with(left.substr(0, space))) return false;
        left.remove_prefix(space + 1);
    }
    return true;
}

/// A call of a libm function: bare or from std, not one of ours that is a member or has a
/// namespace.
bool calls_libm(std::string_view line, std::string_view name) {
    for (std::size_t at = find_token(line, name); at != std::string_view::npos;
         at = find_token(line, name, at + 1)) {
        if (!line.substr(at + name.size()).starts_with('(')) continue;
        const std::string_view before = line.substr(0, at);
        if (before.ends_with("std::")) return true;
        if (!before.ends_with("::") && !before.ends_with('.') && !before.ends_with("->"))
            return true;
    }
    return false;
}

/// A function of a header that stands outside every type: its name and a parenthesis, no value
/// before.
bool declares_function(std::string_view line) {
    if (line.empty() || !(is_letter(line.front()) || line.front() == '[')) return false;
    for (const std::string_view other : {"namespace",
                                         "struct",
                                         "class",
                                         "enum",
                                         "using",
                                         "typedef",
                                         "static_assert",
                                         "template",
                                         "extern",
                                         "friend"}) {
        if (line.starts_with(other)) return false;
    }
    const std::size_t open = line.find('(');
    if (open == std::string_view::npos || open == 0 || !is_name_sign(line[open - 1])) return false;
    return line.substr(0, open).find_first_of("={") == std::string_view::npos;
}

/// True when the comment block above has `label`: above the function, its template line, or the
/// functions that stand right on top of it and share the block.
bool documented(const SourceText& file, std::size_t at, std::string_view label) {
    while (at > 0 && (file.raw[at - 1].starts_with("template") ||
                      (declares_function(file.code[at - 1]) && file.code[at - 1].ends_with(';')))) {
        --at;
    }
    for (; at > 0 && file.raw[at - 1].starts_with("///"); --at) {
        if (file.raw[at - 1].find(label) != std::string::npos) return true;
    }
    return false;
}

/// # or 0x and six or eight hexadecimal digits.
bool names_colour(std::string_view text, std::string_view lead) {
    for (std::size_t at = text.find(lead); at != std::string_view::npos;
         at = text.find(lead, at + 1)) {
        const std::string_view rest = text.substr(at + lead.size());
        const auto end = std::find_if_not(rest.begin(), rest.end(), [](char sign) {
            return std::isxdigit(static_cast<unsigned char>(sign)) != 0;
        });
        const auto digits = end - rest.begin();
        if (digits == 6 || digits == 8) return true;
    }
    return false;
}

}  // namespace

Complaints ban_complaints(const SourceText& file) {
    Complaints out;
    for (std::size_t i = 0; i < file.code.size(); ++i) {
        const std::string_view line = code_or_path(file, i);
        for (const Ban& ban : bans) {
            if (!holds_for(ban, file.path)) continue;
            if (find_token(line, ban.token) == std::string_view::npos) continue;
            complain(out, file, i + 1, std::string{ban.token} + ": " + std::string{ban.remedy});
        }
        if (in_canvas(file.path)) continue;
        for (const std::string_view name : libm) {
            if (!calls_libm(line, name)) continue;
            complain(out, file, i + 1, std::string{name} + ": use base/real or whole numbers");
        }
    }
    return out;
}

Complaints document_complaints(const SourceText& file) {
    Complaints out;
    if (!file.path.ends_with(".hpp")) return out;
    for (std::size_t i = 0; i < file.code.size(); ++i) {
        const std::string_view line = file.code[i];
        if (!declares_function(line)) continue;
        const std::size_t number = i + 1;
        const bool gives = line.starts_with("[[nodiscard]]");
        const bool silent = find_token(line.substr(0, line.find('(')), "void") != std::string::npos;
        if (!gives && !silent) complain(out, file, number, "add [[nodiscard]]: a value is for use");
        if (line.substr(0, line.find('(')).find("size_t") != std::string_view::npos) {
            complain(out, file, number, "return an int32_t or int64_t: size_t has no fixed width");
        }
        for (const std::string_view label : {"Units:", "Errors:", "Source:"}) {
            if (!gives || documented(file, i, label)) continue;
            complain(out, file, number, "add `" + std::string{label} + "` to the /// block above");
        }
    }
    return out;
}

/// A number with a point or an F, which no count and no index has: 12.5, 8.F, 3F.
bool names_size(std::string_view line) {
    for (std::size_t i = 0; i < line.size(); ++i) {
        const auto at = [&](std::size_t place) {
            return place < line.size() ? static_cast<unsigned char>(line[place]) : 0;
        };
        const bool starts = std::isdigit(at(i)) != 0 &&
                            (i == 0 || (std::isalnum(at(i - 1)) == 0 && at(i - 1) != '_'));
        if (!starts) continue;
        std::size_t end = i;
        while (std::isdigit(at(end)) != 0 || at(end) == '\'')
            ++end;
        if (at(end) == '.' || at(end) == 'F') return true;
        i = end;
    }
    return false;
}

Complaints panel_complaints(const SourceText& file) {
    constexpr std::string_view remedy = "take the colour from wasm/theme.hpp by what it means";
    constexpr std::string_view size = "take the size or share from wasm/theme.hpp by its name";
    Complaints out;
    for (std::size_t i = 0; i < file.code.size(); ++i) {
        const std::string_view line = file.code[i];
        bool colour = names_colour(line, "0x");
        for (const std::string_view token : {"IM_COL32", "ImColor", "ImVec4"}) {
            colour = colour || find_token(line, token) != std::string_view::npos;
        }
        if (colour) complain(out, file, i + 1, remedy);
        if (names_size(line)) complain(out, file, i + 1, size);
    }
    for (const Literal& literal : file.literals) {
        if (names_colour(literal.text, "#")) complain(out, file, literal.line, remedy);
    }
    return out;
}

}  // namespace twoclocks::support
