// The fields of a limit on a form, out of the record and back into it: those that most limits have,
// and under "More settings" all others. Ids are the keys of the file format, so that a problem of
// the record finds its field.
#pragma once

#include "wasm/app/form_fields.hpp"

#include "engine/facts/fact.hpp"

namespace twoclocks::canvas {

/// The limit of a form that nobody has filled in yet.
[[nodiscard]] facts::LimitSet fresh_limit();

/// Adds the fields that most limits have, filled from one.
void add_usual_fields(Form& form, const facts::LimitSet& limit);

/// Adds the fields that few limits have, filled from one.
void add_rare_fields(Form& form, const facts::LimitSet& limit);

/// The field of one key of a limit.
[[nodiscard]] FieldView limit_field(const facts::LimitSet& limit, std::string_view key);

/// A field that few need, among those of a group.
[[nodiscard]] FieldView as_more(FieldView field, base::Word group);

/// Takes what the person left in the fields into a limit. What has no field stays as it is, and a
/// time that was not touched keeps its seconds, which the field shows only to the tenth.
void read_limit(FieldReader& reader, facts::LimitSet& limit);

/// Says of a record that is about to be written what is wrong with it, each beside its field; of
/// one whose fields could not all be read nothing, for what was not read is not missing.
void check_fields(FieldReader& reader, const facts::Body& body);

/// The same of a limit, with what its item and the day leave possible.
void check_limit_fields(FieldReader& reader,
                        const facts::Body& body,
                        facts::ItemRole role,
                        base::Date today);

}  // namespace twoclocks::canvas
