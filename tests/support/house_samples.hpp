// Runs a house rule on a sample, for the tests that show each rule firing.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/support/house_rules.hpp"
#include "tests/support/source_text.hpp"

#include <cstddef>
#include <string>
#include <string_view>

namespace twoclocks::support {

using Rule = Complaints (*)(const SourceText&);

/// How often the rule complains of a sample.
[[nodiscard]] inline std::size_t count(Rule rule, const std::string& path, std::string_view text) {
    return rule(source_text(path, text)).size();
}

/// The rule's only complaint of a sample, without the place.
[[nodiscard]] inline std::string said(Rule rule, const std::string& path, std::string_view text) {
    const Complaints out = rule(source_text(path, text));
    REQUIRE(out.size() == 1);
    const std::string& line = out.front();
    REQUIRE(line.starts_with(path + ":"));
    return line.substr(line.find(": ") + 2);
}

[[nodiscard]] inline std::string repeated(std::string_view line, std::size_t times) {
    std::string out;
    for (std::size_t i = 0; i < times; ++i)
        out += line;
    return out;
}

}  // namespace twoclocks::support
