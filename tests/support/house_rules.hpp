// The rules of the house, each a plain function from a file (or all of them) to complaints.
//
// A complaint is "path:line: what to do about it". A rule counts only because house_rules_test.cpp
// shows it firing on a bad sample and silent on a good one, and then runs it over the repository.
//
// Not covered here: what a compiler, clang-tidy, the formatter or eslint already refuse, and what a
// page does (tests/browser).
#pragma once

#include "tests/support/source_text.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::support {

using Complaints = std::vector<std::string>;

/// Adds a complaint about a line of a file; lines count from 1.
void complain(Complaints& out, const SourceText& file, std::size_t line, std::string_view why);

// On any C++ file of ours.
[[nodiscard]] Complaints size_complaints(const SourceText& file);
[[nodiscard]] Complaints name_complaints(const SourceText& file);
[[nodiscard]] Complaints mark_complaints(const SourceText& file);

// On the engine.
[[nodiscard]] Complaints direction_complaints(const SourceText& file);
[[nodiscard]] Complaints document_complaints(const SourceText& file);

// On the engine and the canvas.
[[nodiscard]] Complaints ban_complaints(const SourceText& file);
[[nodiscard]] Complaints prose_complaints(const SourceText& file);
[[nodiscard]] Complaints panel_complaints(const SourceText& file);
[[nodiscard]] Complaints browser_complaints(const std::vector<SourceText>& files);

// On folders: the names that stand in them, without what is never committed.
[[nodiscard]] Complaints top_level_complaints(const std::vector<std::string>& names);
[[nodiscard]] Complaints room_complaints(const std::vector<std::string>& engine_folders);
[[nodiscard]] Complaints readme_complaints(const std::string& path, const std::string& text);

/// All rules on one file, by where it lies.
[[nodiscard]] Complaints complaints(const SourceText& file);

}  // namespace twoclocks::support
