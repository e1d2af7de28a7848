// Two ways through the fields of a record: one looks at them, one may change them. Both are told
// every field by its key, in the order of the file, and override what they care for.
//
// They are virtual, not templates: each walks every kind of record, and a copy of the whole list
// for each of them is a quarter of the program that a phone has to load.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/facts/fact.hpp"
#include "engine/facts/names.hpp"

namespace twoclocks::facts {

/// Looks at each field of a record.
class FieldTeller {
  public:
    FieldTeller() = default;
    FieldTeller(const FieldTeller&) = delete;
    FieldTeller& operator=(const FieldTeller&) = delete;
    virtual ~FieldTeller() = default;

    virtual void needed_text(std::string_view, const std::string&) {}

    virtual void text(std::string_view, const std::string&) {}

    virtual void note(std::string_view, const std::string&) {}

    virtual void truth(std::string_view, bool) {}

    virtual void date(std::string_view, const std::optional<base::Date>&) {}

    virtual void needed_time(std::string_view, base::FlightTime) {}

    virtual void time(std::string_view, const std::optional<base::FlightTime>&) {}

    virtual void count(std::string_view, const std::optional<base::Count>&) {}

    virtual void money(std::string_view, const std::optional<base::Money>&) {}

    virtual void months(std::string_view, const std::optional<std::int32_t>&) {}

    /// A number from 0 to `most`.
    virtual void number(std::string_view, const std::optional<std::int32_t>&, std::int32_t) {}

    virtual void needed_number(std::string_view, std::int32_t, std::int32_t) {}

    virtual void choice(std::string_view, Choices, std::uint8_t) {}

    virtual void maybe_choice(std::string_view, Choices, std::optional<std::uint8_t>) {}

    virtual void maybe_ids(std::string_view, const std::vector<base::Id>&) {}

    virtual void ref(std::string_view, const Ref&) {}

    virtual void refs(std::string_view, const std::vector<Ref>&) {}

    virtual void renewals(std::string_view, const std::vector<Renewal>&) {}

    virtual void body(std::string_view, const std::shared_ptr<const Body>&) {}

    template <class T>
    void name(std::string_view key, T value) {
        choice(key, choices_of<T>, static_cast<std::uint8_t>(value));
    }

    template <class T>
    void maybe_name(std::string_view key, const std::optional<T>& value) {
        std::optional<std::uint8_t> place;
        if (value) place = static_cast<std::uint8_t>(*value);
        maybe_choice(key, choices_of<T>, place);
    }
};

/// Looks at each field of a record and may put something else there.
class FieldTaker {
  public:
    FieldTaker() = default;
    FieldTaker(const FieldTaker&) = delete;
    FieldTaker& operator=(const FieldTaker&) = delete;
    virtual ~FieldTaker() = default;

    virtual void needed_text(std::string_view, std::string&) {}

    virtual void text(std::string_view, std::string&) {}

    virtual void note(std::string_view, std::string&) {}

    virtual void truth(std::string_view, bool&) {}

    virtual void date(std::string_view, std::optional<base::Date>&) {}

    virtual void needed_time(std::string_view, base::FlightTime&) {}

    virtual void time(std::string_view, std::optional<base::FlightTime>&) {}

    virtual void count(std::string_view, std::optional<base::Count>&) {}

    virtual void money(std::string_view, std::optional<base::Money>&) {}

    virtual void months(std::string_view, std::optional<std::int32_t>&) {}

    /// A number from 0 to `most`.
    virtual void number(std::string_view, std::optional<std::int32_t>&, std::int32_t) {}

    virtual void needed_number(std::string_view, std::int32_t&, std::int32_t) {}

    virtual void choice(std::string_view, Choices, std::uint8_t&) {}

    virtual void maybe_choice(std::string_view, Choices, std::optional<std::uint8_t>&) {}

    virtual void maybe_ids(std::string_view, std::vector<base::Id>&) {}

    virtual void ref(std::string_view, Ref&) {}

    virtual void refs(std::string_view, std::vector<Ref>&) {}

    virtual void renewals(std::string_view, std::vector<Renewal>&) {}

    virtual void body(std::string_view, std::shared_ptr<const Body>&) {}

    template <class T>
    void name(std::string_view key, T& value) {
        auto place = static_cast<std::uint8_t>(value);
        choice(key, choices_of<T>, place);
        value = static_cast<T>(place);
    }

    template <class T>
    void maybe_name(std::string_view key, std::optional<T>& value) {
        std::optional<std::uint8_t> place;
        if (value) place = static_cast<std::uint8_t>(*value);
        maybe_choice(key, choices_of<T>, place);
        value.reset();
        if (place) value = static_cast<T>(*place);
    }
};

/// Tells every field of a record.
/// Units: as fact.hpp. Errors: none. Source: fields.hpp, journal.schema.json.
void visit_fields(FieldTeller& teller, const Fields& fields);

/// As above, of a limit alone.
/// Units: as fact.hpp. Errors: none. Source: as above.
void visit_fields(FieldTeller& teller, const LimitSet& limit);

/// Tells every field of a record to one that may change it.
/// Units: as fact.hpp. Errors: none. Source: as above.
void visit_fields(FieldTaker& taker, Fields& fields);

/// As above, of a limit alone, and of an item.
/// Units: as fact.hpp. Errors: none. Source: as above.
void visit_fields(FieldTaker& taker, LimitSet& limit);
void visit_fields(FieldTaker& taker, ItemAdded& item);

}  // namespace twoclocks::facts
