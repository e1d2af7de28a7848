// A type template: what an aircraft of a type usually has, as a start for the person who adds one.
//
// The hard questions.
//   Whose limits are they? Nobody's: every template is invented and says so. Its figures become
//   facts only with a person's save, who names the document and the revision they stand in.
//   Where does an item count from that an overhaul renews? From the last overhaul of the aircraft.
//   What counts from anything else is left unanchored: the earliest it could be, marked as assumed.
//   What does a work renew of items that were left out? Nothing: the rule names those on record.
//
// The file, one JSON object (assets/templates; whole numbers only, hours as whole hours):
//   name, note       text; invented: true
//   items            key, name, role, chapter, class, then the fields of a limit as a journal has
//                    them, but what only a person can know: hours, months or days, landings,
//                    starts, first_*, once, combine, cap_*, calendar_rule, anchor, in_force
//   works            name, renews: a list of {item: key, clocks: [...]}; no clocks: all it has
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// An item of a template with its usual limit, under the key that works name it by.
struct TemplateItem {
    std::string key;
    ItemAdded item;
    LimitSet limit;
};

/// Which item of the template a work renews, and which of its clocks; none named is all of them.
struct TemplateRenewal {
    std::string item;
    std::vector<Clock> clocks;
};

struct TemplateWork {
    std::string name;
    std::vector<TemplateRenewal> renews;
};

struct TypeTemplate {
    std::string name;
    std::string note;
    std::vector<TemplateItem> items;
    std::vector<TemplateWork> works;
};

/// What a person says of what is taken over.
struct TakenOver {
    base::Date on;
    base::Id aircraft;
    std::string source;
    std::string revision;
};

/// The last overhaul of the aircraft, or its first day where it never had one.
struct LastOverhaul {
    Anchor anchor{Anchor::overhaul};
    std::optional<base::Date> on;
    std::optional<base::FlightTime> total;
};

/// Reads a template.
/// Units: hours of the file are whole hours. Range: as check.hpp.
/// Errors: those of read_json; fact_field_missing, fact_field_wrong and those of check;
/// template_not_invented, template_field_unknown, template_key_twice, template_item_unknown,
/// template_clock_missing, template_work_empty. Collected; the field is "items.KEY.FIELD".
/// Source: our choice.
[[nodiscard]] base::Result<TypeTemplate> parse_template(std::string_view text);

/// The item and its limit as records, under an id that the caller made.
/// Units: as fact.hpp. Errors: none. Source: our choice, see the top.
[[nodiscard]] std::vector<Body> item_bodies(const TemplateItem& item,
                                            const LimitSet& limit,
                                            const TakenOver& taken,
                                            const LastOverhaul& last,
                                            base::Id id);

/// What a work renews of the items on record, by key and id.
/// Units: none. Errors: none; what was left out is renewed by nothing. Source: our choice.
[[nodiscard]] std::vector<Renewal> renewals_of(
    const TemplateWork& work, const std::vector<std::pair<std::string, base::Id>>& on_record);

/// The rule of a work as a record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Body rule_body(const TemplateWork& work,
                             const std::vector<std::pair<std::string, base::Id>>& on_record,
                             const TakenOver& taken);

}  // namespace twoclocks::facts
