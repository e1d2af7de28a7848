// What a reader makes of single values: the value, or a problem that names its field.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

class Judge {
  public:
    explicit Judge(base::Problems& problems) : problems_(problems) {}

    /// Ends the list with a problem of a field.
    /// Units: none. Errors: none. Source: our choice.
    void complain(base::Trouble code, std::string_view key);

    /// The problems so far.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] base::Problems& problems() const { return problems_; }

  protected:
    /// A text of at most 4 KB.
    /// Units: bytes. Errors: line_text_too_long. Source: our choice.
    [[nodiscard]] std::string short_text(std::string_view key, const std::string& text);

    /// A day, the first of all when it is none.
    /// Units: days. Errors: those of parse_date. Source: journal.schema.json.
    [[nodiscard]] base::Date date_of(std::string_view key, const std::string& text);

    /// An amount in its one way of writing: without a code it would be in anybody's currency.
    /// Units: minor units. Errors: those of parse_money, money_malformed in another way of writing.
    /// Source: journal.schema.json.
    [[nodiscard]] std::optional<base::Money> money_of(std::string_view key,
                                                      const std::string& text);

    /// An id, and a reference.
    /// Units: none. Errors: fact_field_wrong. Source: journal.schema.json.
    void id_in(std::string_view key, const Json& value, base::Id& out);
    void ref_in(std::string_view key, const Json& value, Ref& out);

  private:
    base::Problems& problems_;
};

/// A caution: a field holds a word of a newer version.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Problem newer_word(std::string_view key, const std::string& word);

}  // namespace twoclocks::facts
