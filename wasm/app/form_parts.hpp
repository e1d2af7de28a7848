// What the forms of parts share: what a part can be fitted to, hours of that on a day, and whether
// what is entered adds up with what is recorded.
#pragma once

#include "wasm/app/form_fields.hpp"

namespace twoclocks::canvas {

inline constexpr const char* host_field = "host";
inline constexpr const char* host_total_field = "host_total";
inline constexpr const char* day_field = "date";

/// The part a form is about, null when it is not recorded.
[[nodiscard]] const timeline::PartState* part_in(const FormContext& context, base::Id part);

/// The part that an item hangs on, null when it hangs on none.
[[nodiscard]] const timeline::PartState* part_with_item(const FormContext& context, base::Id item);

/// Title, intro with the name of the part, and the day.
void begin_part_form(Form& form, const FormContext& context, base::Word title, base::Word intro);

/// A field to type into, with its hint.
void add_field(Form& form,
               const char* id,
               base::Word label,
               FieldKind kind,
               Need need,
               base::Word hint = base::Word::blank);

/// No or yes.
void add_truth(Form& form, const char* id, base::Word label, base::Word hint);

/// Nothing, then aircraft and parts, without the part itself, what is in it and what is scrapped.
void add_hosts(Form& form, const FormContext& context, base::Id part, base::Id chosen);

/// Hours of what the part is or will be fitted to, filled in where the record knows them.
void add_host_total(Form& form, const FormContext& context);

/// What the form's part is fitted to, or the host that is chosen; empty for none.
[[nodiscard]] base::Id host_of(const Form& form, const FormContext& context);

/// Hours of a host on a day: total time of an aircraft, time since new of a part. Nothing where
/// something was flown about that day and nobody recorded how much by then.
[[nodiscard]] std::optional<base::FlightTime> known_total(const FormContext& context,
                                                          base::Id host,
                                                          base::Date on);

/// Reads the day and refuses one ahead.
[[nodiscard]] std::optional<base::Date> read_day(FieldReader& reader,
                                                 const FormContext& context,
                                                 std::string_view field = day_field);

/// Reads the hours of the host and refuses those that do not fit between what is recorded.
[[nodiscard]] std::optional<base::FlightTime> read_host_total(FieldReader& reader,
                                                              const FormContext& context,
                                                              base::Id host,
                                                              const std::optional<base::Date>& on);

/// A whole number as a count; missing stays missing.
[[nodiscard]] std::optional<base::Count> read_count(FieldReader& reader, std::string_view field);

/// Puts a problem beside a field.
void complain(FieldReader& reader,
              std::string field,
              base::Trouble code,
              std::vector<base::Arg> args = {});

/// Refuses facts after which the part's record would not add up where it does now.
void refuse_new_troubles(FieldReader& reader,
                         const FormContext& context,
                         base::Id part,
                         const std::vector<facts::Fact>& facts);

}  // namespace twoclocks::canvas
