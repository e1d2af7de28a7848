// What a page says, as plain text.
#pragma once

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/why.hpp"

namespace twoclocks::support {

[[nodiscard]] inline std::string said(const base::Message& message) {
    return base::say(message, {});
}

[[nodiscard]] inline std::vector<std::string> said(const std::vector<base::Message>& messages) {
    std::vector<std::string> out;
    for (const base::Message& message : messages)
        out.push_back(said(message));
    return out;
}

/// The lines of a why.
[[nodiscard]] inline std::vector<std::string> said(const views::Why& why) {
    std::vector<std::string> out;
    for (const views::WhyLine& line : why.lines)
        out.push_back(said(line.text));
    return out;
}

}  // namespace twoclocks::support
