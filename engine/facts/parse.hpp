// Reading a journal file: every line tried, every problem collected with its line, nothing guessed.
#pragma once

#include <string_view>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

inline constexpr std::int32_t journal_version = 1;
inline constexpr std::int64_t largest_file_bytes = 96LL * 1024 * 1024;
inline constexpr std::int32_t most_facts = 500'000;

/// What came out of a file. Facts are whole or not there; problems say which lines were not read,
/// and cautions among them which were read and not understood.
struct Parsed {
    bool ours{false};   // the header line is a journal's
    bool newer{false};  // a newer major version: show it, write nothing into it
    std::vector<Fact> facts;
    base::Problems problems;
};

/// Reads one fact from one line.
/// Units: as journal.schema.json. Errors: those of read_json; fact_field_missing, fact_field_wrong,
/// fact_kind_nested, and those of check. Each carries the line and the field.
/// Source: journal.schema.json.
[[nodiscard]] base::Result<Fact> parse_fact(std::string_view text, std::int32_t line);

/// As above, and a caution for every word of a newer version: its record is kept as an unknown kind
/// is, printed back as it was read, its fields in the order of this version's list.
/// Units: as above. Errors: as above; cautions are word_newer with the line and the field.
/// Source: our choice, a newer minor version adds kinds, fields and words.
[[nodiscard]] base::Result<Fact> parse_fact(std::string_view text,
                                            std::int32_t line,
                                            base::Problems& cautions);

/// Reads a journal file: a header line, then a fact a line; empty lines and a closing line feed
/// are fine.
/// Units: as journal.schema.json. Range: 96 MB, 500,000 facts. Errors: file_empty, file_foreign,
/// file_too_large, file_too_many, file_newer, file_torn and those of parse_fact, collected.
/// Source: journal.schema.json.
[[nodiscard]] Parsed parse_journal(std::string_view text);

/// The header line of a canonical journal, without device or date.
/// Units: none. Errors: none. Source: journal.schema.json.
[[nodiscard]] std::string print_header();

/// Reads a reference: an id, or an id, a slash and 16 hexadecimal digits.
/// Units: none. Errors: id_malformed. Source: our choice.
[[nodiscard]] base::Result<Ref> parse_ref(std::string_view text);

}  // namespace twoclocks::facts
