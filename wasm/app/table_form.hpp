// What the forms share that read rows out of a table: a field for each column, and what is read.
#pragma once

#include "wasm/app/form_fields.hpp"
#include "wasm/app/table_sorted.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {

/// The fields that a table comes in by: a file, or rows pasted.
void add_table_fields(Form& form);

/// The aircraft that is chosen in a form, null for none.
[[nodiscard]] const timeline::AircraftState* chosen_aircraft(const Form& form,
                                                             const FormContext& context);

/// The table of a form, and what its fields say of it.
class TableForm {
  public:
    TableForm(Form& form, const FormContext& context) : form_(form), context_(context) {}

    /// What keeps the rows from being read, each at its field. The others are asked when there is
    /// none.
    [[nodiscard]] base::Problems problems();
    /// The same, complained of; true where there is none.
    [[nodiscard]] bool is_readable(FieldReader& reader);

    [[nodiscard]] Sorted<facts::ReadingRow> readings(const timeline::AircraftState& aircraft) const;
    [[nodiscard]] Sorted<facts::PartRow> parts() const;
    [[nodiscard]] Sorted<facts::PriceLine> prices() const;
    /// How many rows there are of each kind, and the first few.
    [[nodiscard]] std::vector<base::Message> told() const;

  private:
    /// And what they change in the estimate.
    [[nodiscard]] std::vector<base::Message> told_of_prices() const;

    Form& form_;
    const FormContext& context_;
    facts::Table table_;
    facts::TableAsked asked_;
};

/// The choice of leaving out what cannot be taken, among those of the field "faults".
inline constexpr std::int32_t leaves_out_faults = 1;

/// True when the rows may be saved; otherwise the form complains.
template <class Row>
[[nodiscard]] bool may_save(FieldReader& reader, const Sorted<Row>& sorted) {
    const bool leaves_out = reader.choice("faults") == leaves_out_faults;
    if (!sorted.faults.empty() && !leaves_out)
        reader.complain("faults",
                        base::Trouble::table_rows_faulty,
                        {base::whole_arg(static_cast<std::int64_t>(sorted.faults.size()))});
    else if (sorted.fresh.empty())
        reader.complain(base::trouble(base::Trouble::table_nothing_new));
    return reader.sound();
}

}  // namespace twoclocks::canvas
