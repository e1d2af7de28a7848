#include "tests/support/house_rules.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

namespace twoclocks::support {
namespace {

constexpr std::size_t most_lines = 300;
constexpr std::size_t most_columns = 100;
constexpr std::size_t most_function_lines = 60;
constexpr std::size_t most_readme_lines = 40;

/// In the order in which facts flow; a room includes itself and rooms before it.
constexpr std::array<std::string_view, 9> rooms{
    "base", "facts", "timeline", "limits", "work", "forecast", "plan", "budget", "views"};

constexpr std::array<std::string_view, 13> top_level{".ci",
                                                     ".clang-format",
                                                     ".clang-tidy",
                                                     ".gitignore",
                                                     "CMakeLists.txt",
                                                     "DEVELOPERS.md",
                                                     "README.md",
                                                     "assets",
                                                     "demo",
                                                     "engine",
                                                     "tests",
                                                     "wasm",
                                                     "web"};

/// There, but never committed.
constexpr std::array<std::string_view, 3> left_out{".cache", ".git", "build"};

template <std::size_t size>
bool holds(const std::array<std::string_view, size>& names, std::string_view name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::size_t letters(std::string_view line) {
    return static_cast<std::size_t>(std::count_if(line.begin(), line.end(), [](char sign) {
        return (static_cast<unsigned char>(sign) & 0xC0U) != 0x80U;
    }));
}

/// The folder below engine/ that a path or an include line names, empty without one.
std::string_view room_in(std::string_view text) {
    constexpr std::string_view house = "engine/";
    const std::size_t start = text.find(house);
    if (start == std::string_view::npos) return {};
    text.remove_prefix(start + house.size());
    return text.substr(0, text.find('/'));
}

std::size_t place_of(std::string_view room) {
    return static_cast<std::size_t>(std::find(rooms.begin(), rooms.end(), room) - rooms.begin());
}

bool is_snake_case(std::string_view name) {
    return std::all_of(name.begin(), name.end(), [](char sign) {
        return std::islower(static_cast<unsigned char>(sign)) != 0 ||
               std::isdigit(static_cast<unsigned char>(sign)) != 0 || sign == '_' || sign == '.';
    });
}

/// A body that begins here: a line without indent that opens a brace and is no type or namespace.
bool opens_function(std::string_view line) {
    if (line.empty() || line.front() == ' ' || line.front() == '#' || !line.ends_with('{')) {
        return false;
    }
    for (const std::string_view other :
         {"namespace", "struct", "class", "enum", "union", "extern", "const ", "constexpr std::"}) {
        if (line.starts_with(other)) return false;
    }
    return true;
}

void complain_of_long_functions(Complaints& out, const SourceText& file) {
    std::size_t start = 0;
    bool inside = false;
    for (std::size_t i = 0; i < file.code.size(); ++i) {
        const std::string& line = file.code[i];
        if (!inside && opens_function(line)) {
            inside = true;
            start = i;
        } else if (inside && line.starts_with('}')) {
            inside = false;
            if (i - start + 1 > most_function_lines) {
                complain(out, file, start + 1, "a function over 60 lines: split it");
            }
        }
    }
}

/// Lines that speak to the browser, counted from 1.
std::vector<std::size_t> browser_lines(const SourceText& file) {
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < file.raw.size(); ++i) {
        const std::string& code = file.code[i];
        // An include's path is a literal to the scanner, or stands between < and >.
        const bool header =
            code.starts_with("#include") && file.raw[i].find("html5.h") != std::string::npos;
        const bool macro =
            code.find("EM_JS") != std::string::npos || code.find("EM_ASM") != std::string::npos;
        if (header || macro) out.push_back(i + 1);
    }
    return out;
}

}  // namespace

void complain(Complaints& out, const SourceText& file, std::size_t line, std::string_view why) {
    out.push_back(file.path + ":" + std::to_string(line) + ": " + std::string{why});
}

Complaints size_complaints(const SourceText& file) {
    Complaints out;
    if (file.raw.size() > most_lines) {
        complain(out, file, most_lines + 1, "a file over 300 lines: split it by subject");
    }
    for (std::size_t i = 0; i < file.raw.size(); ++i) {
        if (letters(file.raw[i]) > most_columns) {
            complain(out, file, i + 1, "over 100 columns: break the line");
        }
    }
    complain_of_long_functions(out, file);
    return out;
}

Complaints name_complaints(const SourceText& file) {
    Complaints out;
    if (!is_snake_case(std::string_view{file.path}.substr(file.path.rfind('/') + 1))) {
        complain(out, file, 1, "rename the file in snake_case");
    }
    const bool guarded =
        std::find(file.code.begin(), file.code.end(), "#pragma once") != file.code.end();
    if (file.path.ends_with(".hpp") && !guarded) complain(out, file, 1, "add #pragma once");
    const std::string_view room = room_in(file.path);
    if (!file.path.starts_with("engine/")) return out;
    const std::string home = "namespace twoclocks::" + std::string{room} + " {";
    if (std::find(file.code.begin(), file.code.end(), home) == file.code.end()) {
        complain(out, file, 1, "the namespace is the folder: write `" + home + "`");
    }
    return out;
}

Complaints mark_complaints(const SourceText& file) {
    // In two parts, or this file would complain of itself.
    constexpr std::array<std::array<std::string_view, 2>, 4> marks{
        {{"TO", "DO"}, {"FIX", "ME"}, {"XX", "X"}, {"HA", "CK"}}};
    Complaints out;
    for (std::size_t i = 0; i < file.raw.size(); ++i) {
        for (const auto& [front, back] : marks) {
            const std::string mark = std::string{front} + std::string{back};
            if (file.raw[i].find(mark) == std::string::npos) continue;
            complain(
                out, file, i + 1, mark + ": finish it, or write it down where work is planned");
        }
    }
    return out;
}

Complaints direction_complaints(const SourceText& file) {
    Complaints out;
    const std::size_t here = place_of(room_in(file.path));
    for (std::size_t i = 0; i < file.raw.size(); ++i) {
        // An include's path is a literal to the scanner, so this looks at the line as it stands.
        const std::string_view line = file.raw[i];
        if (!line.starts_with("#include \"")) continue;
        const std::string_view room = room_in(line);
        if (room.empty()) {
            complain(out, file, i + 1, "the engine includes only \"engine/...\" and libraries");
        } else if (place_of(room) > here || place_of(room) == rooms.size()) {
            complain(
                out, file, i, "facts flow one way: include only this room and rooms before it");
        }
    }
    return out;
}

Complaints browser_complaints(const std::vector<SourceText>& files) {
    Complaints out;
    std::string holder;
    for (const SourceText& file : files) {
        const std::vector<std::size_t> lines = browser_lines(file);
        if (lines.empty()) continue;
        if (holder.empty() && file.path.starts_with("wasm/")) holder = file.path;
        if (file.path == holder) continue;
        const std::string home = holder.empty() ? "wasm/platform/" : holder;
        for (const std::size_t line : lines) {
            complain(out,
                     file,
                     line,
                     "one C++ file under wasm/ speaks to the browser: move it to " + home);
        }
    }
    return out;
}

Complaints top_level_complaints(const std::vector<std::string>& names) {
    Complaints out;
    for (const std::string& name : names) {
        if (holds(top_level, name) || holds(left_out, name)) continue;
        out.push_back(name + ": nothing else stands at the top: move it into a folder");
    }
    for (const std::string_view name : top_level) {
        if (std::find(names.begin(), names.end(), name) != names.end()) continue;
        out.push_back(std::string{name} + ": missing at the top: add it");
    }
    return out;
}

Complaints room_complaints(const std::vector<std::string>& engine_folders) {
    Complaints out;
    for (const std::string& folder : engine_folders) {
        if (place_of(folder) == rooms.size()) {
            out.push_back("engine/" + folder + ": not a room of the house: move it into one");
        }
    }
    return out;
}

Complaints readme_complaints(const std::string& path, const std::string& text) {
    if (text.empty()) return {path + ": missing: say what the room is and what it does not cover"};
    const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
    if (lines > most_readme_lines) return {path + ": over 40 lines: say less"};
    return {};
}

Complaints complaints(const SourceText& file) {
    Complaints out;
    const auto add = [&](const Complaints& more) {
        out.insert(out.end(), more.begin(), more.end());
    };
    add(size_complaints(file));
    add(name_complaints(file));
    add(mark_complaints(file));
    const bool engine = file.path.starts_with("engine/");
    if (engine) {
        add(direction_complaints(file));
        add(document_complaints(file));
    }
    if (engine || file.path.starts_with("wasm/")) {
        add(ban_complaints(file));
        add(prose_complaints(file));
    }
    if (file.path.starts_with("wasm/panels/")) add(panel_complaints(file));
    return out;
}

}  // namespace twoclocks::support
