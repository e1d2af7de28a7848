// JSON as the journal uses it: objects, lists, text, whole numbers, true and false. Nothing else.
//
// Read through the library's event interface, so that what a document tree would hide is seen and
// refused: two equal keys, numbers that are not whole or not exact, a null, a tree that is too
// deep.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/problem.hpp"

namespace twoclocks::facts {

/// One JSON value. Members keep the order they were read or added in.
struct Json {
    enum class Type : std::uint8_t { boolean, whole, text, list, object };
    Type type{Type::object};
    bool truth{false};
    std::int64_t whole{0};
    std::string text;
    std::vector<Json> items;
    std::vector<std::pair<std::string, Json>> members;

    // Written out of line: where a value holds pairs of itself, clang 14 with libstdc++ 12 asks for
    // the pair before it is whole.
    Json();
    Json(const Json& other);
    Json(Json&& other) noexcept;
    Json& operator=(const Json& other);
    Json& operator=(Json&& other) noexcept;
    ~Json();

    [[nodiscard]] const Json* find(std::string_view key) const;
};

inline constexpr std::int32_t deepest = 16;
inline constexpr std::int32_t longest_text_bytes = 4 * 1024;
inline constexpr std::int32_t longest_note_bytes = 64 * 1024;
inline constexpr std::int64_t greatest_whole =
    9'007'199'254'740'992;  // 2^53: exact in every reader

/// Reads one line of JSON; its top must be an object.
/// Units: bytes of UTF-8. Range: the limits above. Errors: line_not_json, line_too_deep,
/// line_double_key,
/// line_number_not_whole, line_text_too_long, line_null, line_not_object. Each carries `line`.
/// Source: RFC 8259, I-JSON (RFC 7493) for unique keys and exact numbers.
[[nodiscard]] base::Result<Json> read_json(std::string_view text, std::int32_t line);

/// Appends a value in canonical form: no spaces, members in the order held, shortest escapes.
/// Units: bytes of UTF-8. Errors: none. Source: RFC 8785 section 3.2.2.2 for escapes; our choice
/// of order.
void print_json(const Json& value, std::string& out);

/// Appends a text in quotes with the shortest escapes.
/// Units: bytes of UTF-8. Errors: none. Source: RFC 8785 section 3.2.2.2.
void print_json_text(std::string_view text, std::string& out);

}  // namespace twoclocks::facts
