// Each rule that looks for names or sentences, seen to fire on a bad sample and not on a good one.
#include "tests/support/house_samples.hpp"

#include <string>

using namespace twoclocks::support;

TEST_CASE("rule: the engine names no clock, file, locale, chance or canvas", "[house]") {
    for (const char* line : {"auto t = std::chrono::system_clock::now();",
                             "auto t = std::time(nullptr);",
                             "#include <ctime>",
                             "#include <iostream>",
                             "#include <fstream>",
                             "#include <locale>",
                             "#include <sstream>",
                             "std::setlocale(0, x);",
                             "printf(x);",
                             "#include <random>",
                             "std::mt19937_64 draw{1};",
                             "std::unordered_map<int, int> a;",
                             "#include <unordered_set>",
                             "double a = 1;",
                             "std::vector<float> a;",
                             "static_cast<double>(a)",
                             "#include \"imgui.h\"",
                             "#include \"imgui_internal.h\"",
                             "ImGui::Text(x);",
                             "#include <emscripten.h>",
                             "EMSCRIPTEN_KEEPALIVE",
                             "std::exp(a);",
                             "b = exp(a);",
                             "std::floor(a);",
                             "std::pow(a, 2);",
                             "return sin(a) + 1;"}) {
        CAPTURE(line);
        CHECK(count(ban_complaints, "engine/limits/x.cpp", line) >= 1);
    }
    for (const char* line :
         {"// now() in a double, exp(x), <random>, std::unordered_map, imgui, float",
          "/* std::time */ int a;",
          "const char* a = \"double float imgui exp(a)\";",
          "double_check(a);",
          "no_float();",
          "exp_fixed(a);",
          "base::log(a);",
          "row.exp(a);",
          "it->pow(a);",
          "std::sqrt(a);",
          "int exp = 1;",
          "auto now = later - known;",
          "std::map<int, int> ordered;",
          "#include <cmath>"}) {
        CAPTURE(line);
        CHECK(count(ban_complaints, "engine/limits/x.cpp", line) == 0);
    }
    CHECK(said(ban_complaints, "engine/limits/x.cpp", "clock::now();").find("take `today`") !=
          std::string::npos);
}

TEST_CASE("rule: reals and chance live in rooms of their own", "[house]") {
    for (const char* path : {"engine/base/real.cpp",
                             "engine/base/real.hpp",
                             "engine/forecast/x.cpp",
                             "engine/work/x.cpp",
                             "engine/plan/x.cpp",
                             "engine/budget/x.cpp"}) {
        CHECK(count(ban_complaints, path, "double a = 1; float b = 2;") == 0);
        CHECK(count(ban_complaints, path, "double a = std::exp(1);") == 1);
    }
    for (const char* path : {"engine/base/date.cpp",
                             "engine/facts/x.cpp",
                             "engine/timeline/x.cpp",
                             "engine/limits/x.cpp",
                             "engine/views/x.cpp"}) {
        CHECK(said(ban_complaints, path, "double a = 1;").find("whole quantity") !=
              std::string::npos);
    }
    CHECK(count(ban_complaints, "engine/forecast/x.cpp", "#include <random>") == 0);
    CHECK(count(ban_complaints, "engine/forecast/x.cpp", "std::random_device device;") == 1);
}

TEST_CASE("rule: the canvas has no clock either", "[house]") {
    CHECK(said(ban_complaints, "wasm/x.cpp", "double t = emscripten_get_now();")
              .find("take `today`") != std::string::npos);
    CHECK(count(ban_complaints, "wasm/x.cpp", "auto t = std::chrono::steady_clock::now();") >= 1);
    CHECK(count(ban_complaints, "wasm/x.cpp", "float a = std::floor(b); ImGui::Text(c);") == 0);
}

TEST_CASE("rule: a public function is documented and its value is for use", "[house]") {
    const std::string path = "engine/base/x.hpp";
    const std::string block =
        "/// Adds.\n/// Units: days. Errors: none.\n/// Source: our choice.\n";
    const std::string add = "[[nodiscard]] int add(int a, int b);\n";
    CHECK(count(document_complaints, path, block + add) == 0);
    CHECK(count(document_complaints, path, block + add + add) == 0);
    CHECK(count(document_complaints, path, block + "template <class T>\n" + add) == 0);
    CHECK(count(document_complaints, path, add) == 3);
    CHECK(count(document_complaints, path, block + "\n" + add) == 3);
    CHECK(said(document_complaints, path, "/// Units: days. Errors: none.\n" + add) ==
          "add `Source:` to the /// block above");
    CHECK(said(document_complaints, path, block + "int add(int a, int b);\n").find("[[nodis") !=
          std::string::npos);
    CHECK(said(document_complaints, path, block + "[[nodiscard]] std::size_t size(int a);\n")
              .find("fixed width") != std::string::npos);
    for (const char* line : {"inline constexpr int a = f(1);",
                             "struct A;",
                             "    int member(int a);",
                             "void print(int a, std::string& out);",
                             "using A = int(int);",
                             "inline constexpr std::array a{f(1)};",
                             "// int add(int a);"}) {
        CAPTURE(line);
        CHECK(count(document_complaints, path, line) == 0);
    }
    CHECK(count(document_complaints, "engine/base/x.cpp", "int add(int a, int b) {}") == 0);
}

TEST_CASE("rule: sentences stand in the catalogue alone", "[house]") {
    for (const char* text : {"No reading yet",
                             "Hours left: %d",
                             "a reading",
                             "Über die Zeit",
                             "hours, calendar",
                             "say (once more)"}) {
        CAPTURE(text);
        CHECK(said(prose_complaints, "wasm/x.cpp", "f(\"" + std::string{text} + "\");")
                  .find("words.def") != std::string::npos);
    }
    CHECK(count(prose_complaints, "engine/base/x.cpp", "auto a = R\"(two words)\";") == 1);
    for (const char* text : {"",
                             " ",
                             "hours_left",
                             "{0} {1}",
                             "1 234",
                             "#version 300 es",
                             "a b",
                             "##id",
                             "https://a.example/b",
                             ", ",
                             " · "}) {
        CAPTURE(text);
        CHECK(count(prose_complaints, "wasm/x.cpp", "f(\"" + std::string{text} + "\");") == 0);
    }
    CHECK(count(prose_complaints, "engine/x.cpp", "// say \"two words\" here") == 0);
    CHECK(count(prose_complaints, "engine/x.cpp", "static_assert(a,\n \"two words\");") == 0);
}

TEST_CASE("rule: panels take colours and sizes from the theme", "[house]") {
    for (const char* line : {"a = IM_COL32(1, 2, 3, 4);",
                             "ImVec4(1, 0, 0, 1);",
                             "ImVec4 a{};",
                             "ImColor a;",
                             "a = 0xFF00AA;",
                             "a = 0xFF00AA11;",
                             "f(\"#ff00aa\");"}) {
        CAPTURE(line);
        CHECK(said(panel_complaints, "wasm/panels/x.cpp", line).find("theme") != std::string::npos);
    }
    for (const char* line : {"ui.gap(12.5F);", "a = 8.0;", "f(3F);", "x = 0.5F * width;"}) {
        CAPTURE(line);
        CHECK(said(panel_complaints, "wasm/panels/x.cpp", line).find("size") != std::string::npos);
    }
    for (const char* line : {"a[12]", "heading(ui, 2, t);", "x12.y", "// 12.5F", "f(\"8.0\");"}) {
        CAPTURE(line);
        CHECK(count(panel_complaints, "wasm/panels/x.cpp", line) == 0);
    }
    for (const char* line : {"theme.ink", "// IM_COL32 0xFF00AA", "a = 0xFF;", "f(\"#1\");"}) {
        CAPTURE(line);
        CHECK(count(panel_complaints, "wasm/panels/x.cpp", line) == 0);
    }
}
