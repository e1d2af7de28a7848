#include "engine/base/csv.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

#include "engine/base/written_number.hpp"

namespace twoclocks::base {
namespace {

constexpr std::string_view separators = "\t;,";  // of as many of each, the first

/// The end of a row as very old machines wrote it.
[[nodiscard]] bool is_lone_return(std::string_view text, std::size_t at) {
    return text[at] == '\r' && (at + 1 == text.size() || text[at + 1] != '\n');
}

/// One letter as UTF-8.
void put_utf8(std::uint32_t letter, std::string& out) {
    const auto put = [&](std::uint32_t byte) { out += static_cast<char>(byte); };
    const auto rest = [&](std::uint32_t shift) { put(0x80U | ((letter >> shift) & 0x3FU)); };
    if (letter < 0x80U) {
        put(letter);
    } else if (letter < 0x800U) {
        put(0xC0U | (letter >> 6U));
        rest(0);
    } else if (letter < 0x10000U) {
        put(0xE0U | (letter >> 12U));
        rest(6);
        rest(0);
    } else {
        put(0xF0U | (letter >> 18U));
        rest(12);
        rest(6);
        rest(0);
    }
}

/// UTF-16 without its mark; nothing where it is cut or a half of a pair stands alone.
[[nodiscard]] std::optional<std::string> from_utf16(std::string_view bytes, bool low_first) {
    if (bytes.size() % 2 != 0) return std::nullopt;
    const auto unit = [&](std::size_t at) {
        const auto low = static_cast<unsigned char>(bytes[low_first ? at : at + 1]);
        const auto high = static_cast<unsigned char>(bytes[low_first ? at + 1 : at]);
        return static_cast<std::uint32_t>(low | (high << 8U));
    };
    std::string out;
    for (std::size_t at = 0; at < bytes.size(); at += 2) {
        std::uint32_t letter = unit(at);
        const bool is_half = letter >= 0xD800U && letter < 0xE000U;
        if (is_half) {
            at += 2;
            if (letter >= 0xDC00U || at >= bytes.size()) return std::nullopt;
            const std::uint32_t second = unit(at);
            if (second < 0xDC00U || second >= 0xE000U) return std::nullopt;
            letter = 0x10000U + ((letter - 0xD800U) << 10U) + (second - 0xDC00U);
        }
        if (letter == 0) return std::nullopt;
        put_utf8(letter, out);
    }
    return out;
}

/// How many bytes the letter has that begins with this one; 0 for none.
[[nodiscard]] std::size_t letter_bytes(unsigned char first) {
    if (first < 0x80U) return 1;
    if (first >= 0xC2U && first < 0xE0U) return 2;
    if (first >= 0xE0U && first < 0xF0U) return 3;
    return first >= 0xF0U && first < 0xF5U ? 4 : 0;
}

/// RFC 3629, section 4: no letter in more bytes than it needs, no half of a pair, none past the
/// end.
[[nodiscard]] bool begins_well(unsigned char first, unsigned char second) {
    switch (first) {
        case 0xE0U:
            return second >= 0xA0U;
        case 0xEDU:
            return second < 0xA0U;
        case 0xF0U:
            return second >= 0x90U;
        case 0xF4U:
            return second < 0x90U;
        default:
            return true;
    }
}

[[nodiscard]] bool is_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t bytes = letter_bytes(static_cast<unsigned char>(text[at]));
        if (bytes == 0 || at + bytes > text.size()) return false;
        const auto byte = [&](std::size_t more) {
            return static_cast<unsigned char>(text[at + more]);
        };
        for (std::size_t more = 1; more < bytes; ++more)
            if ((byte(more) & 0xC0U) != 0x80U) return false;
        if (bytes > 1 && !begins_well(byte(0), byte(1))) return false;
        at += bytes;
    }
    return true;
}

}  // namespace

std::optional<std::string> table_text(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xFE")) return from_utf16(bytes.substr(2), true);
    if (bytes.starts_with("\xFE\xFF")) return from_utf16(bytes.substr(2), false);
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    if (bytes.starts_with(mark)) bytes.remove_prefix(mark.size());
    const bool is_text = is_utf8(bytes) && bytes.find('\0') == std::string_view::npos;
    return is_text ? std::optional{std::string{bytes}} : std::nullopt;
}

char csv_separator(std::string_view text) {
    std::array<std::int64_t, separators.size()> counts{};
    bool quoted = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char sign = text[at];
        if (sign == '"') quoted = !quoted;
        if (quoted) continue;
        const bool ends = sign == '\n' || sign == '\r';
        // A title or nothing says nothing of what stands between.
        const bool says =
            std::any_of(counts.begin(), counts.end(), [](std::int64_t count) { return count > 0; });
        if (ends && says) break;
        const std::size_t which = separators.find(sign);
        if (which != std::string_view::npos) ++counts[which];
    }
    const auto most = std::max_element(counts.begin(), counts.end());
    return *most == 0 ? ',' : separators[static_cast<std::size_t>(most - counts.begin())];
}

bool is_blank(const std::vector<std::string>& fields) {
    return std::all_of(fields.begin(), fields.end(), [](const std::string& field) {
        return without_margins(field).empty();
    });
}

CsvRead read_csv(std::string_view text, char separator, std::size_t most_rows, bool drops_blank) {
    CsvRead out;
    std::vector<std::string> row;
    std::string field;
    bool quoted = false;
    std::int64_t number = 1;
    std::int64_t opened = 0;
    const auto end_field = [&] { row.push_back(std::exchange(field, {})); };
    const auto end_row = [&] {
        end_field();
        const bool is_empty = drops_blank ? is_blank(row) : row.size() == 1 && row.front().empty();
        if (!is_empty) out.rows.push_back({number, std::exchange(row, {})});
        row.clear();
        ++number;
    };
    for (std::size_t at = 0; at < text.size() && out.rows.size() <= most_rows; ++at) {
        const char sign = text[at];
        if (quoted) {
            const bool twice = sign == '"' && at + 1 < text.size() && text[at + 1] == '"';
            if (twice) ++at;
            if (sign == '"' && !twice)
                quoted = false;
            else
                field += sign;
        } else if (sign == '"' && field.empty()) {
            quoted = true;
            opened = number;
        } else if (sign == separator) {
            end_field();
        } else if (sign == '\n' || is_lone_return(text, at)) {
            end_row();
        } else if (sign != '\r') {
            field += sign;
        }
    }
    if (!field.empty() || !row.empty()) end_row();
    if (quoted) out.open_row = opened;
    return out;
}

std::vector<std::vector<std::string>> split_csv(std::string_view text, char separator) {
    std::vector<std::vector<std::string>> out;
    for (CsvRow& row : read_csv(text, separator, text.size(), false).rows)
        out.push_back(std::move(row.fields));
    return out;
}

}  // namespace twoclocks::base
