#include "tests/support/source_text.hpp"

#include "catch_amalgamated.hpp"

using namespace twoclocks::support;

TEST_CASE("a source file is taken apart into code, comments and literals", "[house][source]") {
    const SourceText file = source_text("engine/base/x.cpp",
                                        "int a = 1'000'000; // 'one' \"two\"\n"
                                        "/* three\n four */ char b = '\\'';\n"
                                        "auto c = \"five \\\" // six\" \"seven\";\n"
                                        "auto d = R\"x(eight \"\n nine)x\"; int e;\n"
                                        "static_assert(true, \"ten eleven\"); f(\"twelve\");\n");
    REQUIRE(file.raw.size() == 7);
    REQUIRE(file.code.size() == 7);
    CHECK(file.code[0] == "int a = 1'000'000; ");
    CHECK(file.code[1] == "");
    CHECK(file.code[2] == " char b = \"\";");
    CHECK(file.code[3] == "auto c = \"\" \"\";");
    CHECK(file.code[6].find("static_assert") == 0);
    CHECK(file.raw[0] == "int a = 1'000'000; // 'one' \"two\"");
    REQUIRE(file.literals.size() == 6);
    CHECK(file.literals[1].text == "five \\\" // six");
    CHECK(file.literals[1].line == 4);
    CHECK(file.literals[3].text == "eight \"\n nine");
    CHECK(file.literals[4].asserted);
    CHECK_FALSE(file.literals[5].asserted);
}
