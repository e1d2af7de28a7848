// The house rules, run over the repository, and the rules about its shape, each seen to fire on a
// bad sample first. house_names_test.cpp does the same for the rules about what stands in a line.
#include "tests/support/house_rules.hpp"

#include "tests/support/house_samples.hpp"

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

using namespace twoclocks::support;

namespace {

namespace fs = std::filesystem;

void expect_none(const Complaints& found) {
    for (const std::string& complaint : found)
        FAIL_CHECK(complaint);
}

std::vector<std::string> names_in(const std::string& folder) {
    std::vector<std::string> out;
    for (const auto& entry : fs::directory_iterator{folder}) {
        out.push_back(entry.path().filename().string());
    }
    std::sort(out.begin(), out.end());
    return out;
}

}  // namespace

TEST_CASE("rule: files, lines and functions are short", "[house]") {
    const std::string path = "engine/base/x.cpp";
    CHECK(count(size_complaints, path, repeated("int a;\n", 300)) == 0);
    CHECK(said(size_complaints, path, repeated("int a;\n", 301)).find("split it") !=
          std::string::npos);
    CHECK(count(size_complaints, path, std::string(100, 'a')) == 0);
    CHECK(count(size_complaints, path, repeated("µ", 100)) == 0);
    CHECK(said(size_complaints, path, std::string(101, 'a')).find("break the line") !=
          std::string::npos);
    CHECK(count(size_complaints, path, "int f() {\n" + repeated("  g();\n", 58) + "}\n") == 0);
    CHECK(said(size_complaints, path, "int f() {\n" + repeated("  g();\n", 59) + "}\n")
              .find("split it") != std::string::npos);
    CHECK(count(size_complaints, path, "struct F {\n" + repeated("  int g;\n", 80) + "};\n") == 0);
}

TEST_CASE("rule: names say where a thing lives", "[house]") {
    const std::string home = "namespace twoclocks::base {\n";
    CHECK(count(name_complaints, "engine/base/x.hpp", "#pragma once\n" + home) == 0);
    CHECK(said(name_complaints, "engine/base/x.hpp", home) == "add #pragma once");
    CHECK(count(name_complaints, "engine/base/x.cpp", home) == 0);
    CHECK(said(name_complaints, "engine/facts/x.cpp", home).find("twoclocks::facts") !=
          std::string::npos);
    CHECK(said(name_complaints, "engine/base/bigX.cpp", home).find("snake_case") !=
          std::string::npos);
    CHECK(count(name_complaints, "wasm/panels/x.cpp", "int a;") == 0);
}

TEST_CASE("rule: nothing is left marked as unfinished", "[house]") {
    const std::string mark = std::string{"FIX"} + "ME";
    CHECK(count(mark_complaints, "wasm/x.cpp", "// a remark\nint a;") == 0);
    CHECK(said(mark_complaints, "wasm/x.cpp", "int a; // " + mark + " later").find("finish it") !=
          std::string::npos);
    CHECK(count(mark_complaints, "wasm/x.cpp", std::string{"/* TO"} + "DO */") == 1);
}

TEST_CASE("rule: facts flow one way through the rooms", "[house]") {
    const auto at = [](const std::string& room, const std::string& include) {
        return count(direction_complaints,
                     "engine/" + room + "/x.cpp",
                     "#include \"" + include + "\"\n// #include \"engine/views/y.hpp\"\n");
    };
    const std::vector<std::string> rooms{
        "base", "facts", "timeline", "limits", "work", "forecast", "plan", "budget", "views"};
    for (std::size_t here = 0; here < rooms.size(); ++here) {
        for (std::size_t there = 0; there < rooms.size(); ++there) {
            CAPTURE(rooms[here], rooms[there]);
            CHECK(at(rooms[here], "engine/" + rooms[there] + "/y.hpp") == (there > here ? 1 : 0));
        }
    }
    CHECK(at("views", "engine/attic/y.hpp") == 1);
    CHECK(at("views", "wasm/theme.hpp") == 1);
    CHECK(at("views", "tests/support/house_rules.hpp") == 1);
    CHECK(said(direction_complaints, "engine/base/x.cpp", "#include \"engine/facts/fact.hpp\"")
              .find("rooms before it") != std::string::npos);
    CHECK(count(direction_complaints, "engine/base/x.cpp", "#include <string>") == 0);
}

TEST_CASE("rule: one file under wasm speaks to the browser", "[house]") {
    const SourceText glue = source_text("wasm/a.cpp", "EM_JS(int, f, (), {});\nEM_ASM({});");
    const SourceText other = source_text("wasm/b.cpp", "int a;\n#include <emscripten/html5.h>");
    const SourceText innocent = source_text("wasm/c.cpp", "// EM_JS, html5.h\nint a;");
    const SourceText room = source_text("engine/base/d.cpp", "EM_ASM({});");
    CHECK(browser_complaints({glue, innocent}).empty());
    REQUIRE(browser_complaints({glue, other, innocent}).size() == 1);
    CHECK(browser_complaints({glue, other}).front() ==
          "wasm/b.cpp:2: one C++ file under wasm/ speaks to the browser: move it to wasm/a.cpp");
    CHECK(browser_complaints({room, glue}).size() == 1);
}

TEST_CASE("rule: folders hold what the floor plan says", "[house]") {
    std::vector<std::string> names{".ci",
                                   ".clang-format",
                                   ".clang-tidy",
                                   ".git",
                                   ".gitignore",
                                   "CMakeLists.txt",
                                   "DEVELOPERS.md",
                                   "README.md",
                                   "assets",
                                   "build",
                                   "demo",
                                   "engine",
                                   "tests",
                                   "wasm",
                                   "web"};
    CHECK(top_level_complaints(names).empty());
    names.push_back("notes.txt");
    names.erase(names.begin());
    CHECK(top_level_complaints(names).size() == 2);
    CHECK(room_complaints({"base", "views"}).empty());
    REQUIRE(room_complaints({"base", "attic"}).size() == 1);
    CHECK(room_complaints({"attic"}).front().find("not a room") != std::string::npos);
    CHECK(readme_complaints("engine/base/README.md", repeated("a\n", 40)).empty());
    CHECK(readme_complaints("engine/base/README.md", repeated("a\n", 41)).size() == 1);
    CHECK(readme_complaints("engine/base/README.md", "").size() == 1);
}

TEST_CASE("every source file keeps the house rules", "[house]") {
    const std::vector<SourceText> files =
        read_sources(HOUSE_ROOT, {"engine", "wasm", "tests", "demo"});
    REQUIRE(files.size() > 50);
    for (const SourceText& file : files)
        expect_none(complaints(file));
    expect_none(browser_complaints(files));
}

TEST_CASE("the top of the repository and the rooms are as planned", "[house]") {
    expect_none(top_level_complaints(names_in(HOUSE_ROOT)));
    const std::vector<std::string> rooms = names_in(HOUSE_ROOT "/engine");
    expect_none(room_complaints(rooms));
    for (const std::string& room : rooms) {
        const std::string path = "engine/" + room + "/README.md";
        expect_none(readme_complaints(path, read_file(HOUSE_ROOT "/" + path)));
    }
}
