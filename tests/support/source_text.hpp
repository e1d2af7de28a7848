// Source files as the house rules see them: code without comments, and the literals apart.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace twoclocks::support {

/// What stands between two quotes, and where. Lines count from 1.
struct Literal {
    std::size_t line{0};
    std::string text;
    bool asserted{false};  // the message of a static_assert
};

/// One file. `code` is `raw` with comments gone and the inside of literals taken out, so that a
/// rule about code never trips on a word in prose; both have the same number of lines.
struct SourceText {
    std::string path;  // from the top of the repository, with forward slashes
    std::vector<std::string> raw;
    std::vector<std::string> code;
    std::vector<Literal> literals;
};

/// What a name in code may hold.
[[nodiscard]] bool is_name_sign(char sign);

/// A letter of any alphabet, or a part of one.
[[nodiscard]] bool is_letter(char sign);

/// Takes a file's text apart. Knows both kinds of comment, escapes, raw strings and the ' in 1'000.
[[nodiscard]] SourceText source_text(std::string path, std::string_view text);

/// Every .cpp and .hpp under these folders of a repository, in order of their paths.
[[nodiscard]] std::vector<SourceText> read_sources(const std::string& root,
                                                   const std::vector<std::string>& folders);

/// A whole file.
[[nodiscard]] std::string read_file(const std::string& path);

}  // namespace twoclocks::support
