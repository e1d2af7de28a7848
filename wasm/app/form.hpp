// Forms: what a person types, as a draft, and the facts it becomes. A draft edits freely; what is
// saved is
// corrected or withdrawn.
#pragma once

#include "wasm/app/signer.hpp"
#include "wasm/intent.hpp"
#include "wasm/screen.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/facts/journal.hpp"
#include "engine/timeline/parts.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/plan.hpp"

namespace twoclocks::canvas {

/// One form being filled in.
struct Form {
    FormKind kind{};
    base::Id subject;  // as OpenForm names it
    base::Id aircraft;
    base::Word title{};
    base::Word intro{};
    std::string named;  // what the intro names
    base::Word submit{};
    base::Message about{base::Word::blank, {}};  // what it is for, where the title leaves it open
    bool asks_more{false};                       // the fields that few need are asked for too
    std::vector<FieldView> fields;
    std::vector<base::Problem> problems;
    std::map<std::string, std::string> files;  // bytes of what was chosen, by field
    std::vector<base::Id> hosts;               // what each option of the field "host" stands for
    std::string own_total;                     // what the form itself put into "host_total"
    std::string headings;                      // first row of the table that its columns are of
};

/// What a form may look at.
struct FormContext {
    const facts::Journal& journal;
    const timeline::AircraftState* aircraft{nullptr};  // of the form's subject, null for a new one
    base::Date today;
    std::string author;
    const std::map<base::Id, views::Assessed>* fleet{nullptr};
    const std::vector<timeline::PartState>* parts{nullptr};
    const views::PlanView* planned{nullptr};  // the plan looked at last, of whichever aircraft
    const base::Region* region{nullptr};
};

/// A fresh form with what is known filled in.
[[nodiscard]] Form make_form(FormKind kind, base::Id subject, const FormContext& context);

/// Lays the fields out again that hang on what was chosen; what was typed stays.
void reshape(Form& form, const FormContext& context);

/// The facts a form becomes; none when it has problems, which then stand beside their fields.
[[nodiscard]] std::vector<facts::Fact> submit_form(Form& form,
                                                   const FormContext& context,
                                                   Signer& signer);

/// Puts what few need apart, unless it is asked for or says something: what is saved is seen.
void put_apart(Form& form);

/// What the page shows of a form: the fields that are asked for, and how each was understood.
[[nodiscard]] FormPage page_of_form(const Form& form);
/// Fills in again what the form knows by itself, after one of its fields has changed.
void follow_change(Form& form, std::string_view field, const FormContext& context);

/// After a draft has come back: what in it the form would have filled in itself.
void adopt_total(Form& form, const FormContext& context);

/// A field by its id, null when the form has none of that name.
[[nodiscard]] FieldView* find_field(Form& form, std::string_view id);

/// An aircraft of that id was added.
[[nodiscard]] bool is_aircraft(const facts::Journal& journal, base::Id id);

/// The aircraft that a form's subject belongs to: the subject itself, or the one its fact is about.
/// Of a fact about a part alone it is the part.
[[nodiscard]] base::Id aircraft_of_subject(const facts::Journal& journal, base::Id subject);

}  // namespace twoclocks::canvas
