#include "tests/support/source_text.hpp"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace twoclocks::support {
namespace {

/// Walks over a text once and files every sign under code, comment or literal.
class Scanner {
  public:
    Scanner(std::string path, std::string_view text) : text_(text) {
        out_.path = std::move(path);
        out_.raw.emplace_back();
        out_.code.emplace_back();
    }

    SourceText scan() {
        while (!done()) {
            if (ahead("//")) {
                skip_to_line_end();
            } else if (ahead("/*")) {
                skip_block();
            } else if (ahead("R\"") && !follows_name()) {
                take_raw_string();
            } else if (here() == '"' || (here() == '\'' && !separates_digits())) {
                take_quoted(here());
            } else {
                keep();
            }
        }
        return std::move(out_);
    }

  private:
    [[nodiscard]] bool done() const { return at_ >= text_.size(); }

    [[nodiscard]] char here() const { return text_[at_]; }

    [[nodiscard]] bool ahead(std::string_view what) const {
        return text_.substr(at_).starts_with(what);
    }

    [[nodiscard]] bool follows_name() const { return at_ > 0 && is_name_sign(text_[at_ - 1]); }

    /// True inside a number: the word that ends just before the quote begins with a digit.
    [[nodiscard]] bool separates_digits() const {
        std::size_t start = at_;
        while (start > 0 && (is_name_sign(text_[start - 1]) || text_[start - 1] == '\''))
            --start;
        return start < at_ && std::isdigit(static_cast<unsigned char>(text_[start])) != 0;
    }

    void step() {
        if (here() == '\n') {
            out_.raw.emplace_back();
            out_.code.emplace_back();
        } else {
            out_.raw.back() += here();
        }
        ++at_;
    }

    void keep() {
        const char sign = here();
        step();
        if (sign != '\n') out_.code.back() += sign;
        if (sign == ';' || sign == '{' || sign == '}') {
            statement_.clear();
        } else {
            statement_ += sign;
        }
    }

    void skip_to_line_end() {
        while (!done() && here() != '\n')
            step();
    }

    void skip_block() {
        step();
        step();
        while (!done() && !ahead("*/"))
            step();
        for (int i = 0; i < 2 && !done(); ++i)
            step();
    }

    void file_literal(std::size_t line, std::string text) {
        const bool asserted = statement_.find("static_assert") != std::string::npos;
        out_.code.back() += "\"\"";
        out_.literals.push_back({line, std::move(text), asserted});
    }

    void take_quoted(char quote) {
        const std::size_t line = out_.raw.size();
        std::string inside;
        step();
        while (!done() && here() != quote && here() != '\n') {
            if (here() == '\\' && at_ + 1 < text_.size()) {
                inside += here();
                step();
            }
            inside += here();
            step();
        }
        if (!done() && here() == quote) step();
        file_literal(line, std::move(inside));
    }

    void take_raw_string() {
        const std::size_t line = out_.raw.size();
        const std::size_t open = text_.find('(', at_);
        if (open == std::string_view::npos) return keep();
        const std::string close = ")" + std::string{text_.substr(at_ + 2, open - at_ - 2)} + "\"";
        const std::size_t end = std::min(text_.find(close, open), text_.size());
        std::string inside{text_.substr(open + 1, end - open - 1)};
        while (at_ < std::min(end + close.size(), text_.size()))
            step();
        file_literal(line, std::move(inside));
    }

    std::string_view text_;
    std::size_t at_{0};
    std::string statement_;  // code since the last ; { or }
    SourceText out_;
};

}  // namespace

bool is_name_sign(char sign) {
    return std::isalnum(static_cast<unsigned char>(sign)) != 0 || sign == '_';
}

bool is_letter(char sign) {
    return std::isalpha(static_cast<unsigned char>(sign)) != 0 ||
           static_cast<unsigned char>(sign) >= 0x80U;
}

SourceText source_text(std::string path, std::string_view text) {
    if (text.ends_with('\n')) text.remove_suffix(1);
    return Scanner{std::move(path), text}.scan();
}

std::string read_file(const std::string& path) {
    std::ifstream in{path, std::ios::binary};
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

std::vector<SourceText> read_sources(const std::string& root,
                                     const std::vector<std::string>& folders) {
    namespace fs = std::filesystem;
    const fs::path top{root};
    std::vector<fs::path> paths;
    for (const std::string& folder : folders) {
        if (!fs::exists(top / folder)) continue;
        for (const auto& entry : fs::recursive_directory_iterator{top / folder}) {
            const fs::path kind = entry.path().extension();
            if (kind == ".cpp" || kind == ".hpp") paths.push_back(entry.path());
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<SourceText> out;
    out.reserve(paths.size());
    for (const fs::path& path : paths) {
        const std::string name = path.lexically_relative(top).generic_string();
        out.push_back(source_text(name, read_file(path.string())));
    }
    return out;
}

}  // namespace twoclocks::support
