// Fields of a form out of any record, and back into it. They come from the one list of fields that
// the file format has, so a new kind of record has a form without a line here.
#pragma once

#include "wasm/app/form_fields.hpp"

#include "engine/facts/fact.hpp"

namespace twoclocks::canvas {

/// Adds a field for each of the record that a person can type; an amount that is not there is asked
/// for in `otherwise`.
void add_record_fields(Form& form, const facts::Fields& fields, base::Currency otherwise);

/// Takes what the person left in each. What has no field stays as it is, and a time that was not
/// touched keeps its seconds, which the field shows only to the tenth.
void read_record_fields(FieldReader& reader, facts::Fields& fields);

}  // namespace twoclocks::canvas
