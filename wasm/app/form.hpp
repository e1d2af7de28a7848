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
#include "engine/timeline/state.hpp"

namespace twoclocks::canvas {

/// One form being filled in.
struct Form {
    FormKind kind{};
    base::Id subject;  // as OpenForm names it
    base::Id aircraft;
    base::Word title{};
    base::Word intro{};
    base::Word submit{};
    base::Message about{base::Word::blank, {}};  // what it is for, where the title leaves it open
    bool asks_more{false};                       // the fields that few need are asked for too
    std::vector<FieldView> fields;
    std::vector<base::Problem> problems;
    std::map<std::string, std::string> files;  // bytes of what was chosen, by field
};

/// What a form may look at.
struct FormContext {
    const facts::Journal& journal;
    const timeline::AircraftState* aircraft{nullptr};  // of the form's subject, null for a new one
    base::Date today;
    std::string author;
};

/// A fresh form with what is known filled in.
[[nodiscard]] Form make_form(FormKind kind, base::Id subject, const FormContext& context);

/// The facts a form becomes; none when it has problems, which then stand beside their fields.
[[nodiscard]] std::vector<facts::Fact> submit_form(Form& form,
                                                   const FormContext& context,
                                                   Signer& signer);

/// Puts what few need apart, unless it is asked for or says something: what is saved is seen.
void put_apart(Form& form);

/// What the page shows of a form: the fields that are asked for, and how each was understood.
[[nodiscard]] FormPage page_of_form(const Form& form);

/// A field by its id, null when the form has none of that name.
[[nodiscard]] FieldView* find_field(Form& form, std::string_view id);

/// The aircraft that a form's subject belongs to: the subject itself, or the one its fact is about.
[[nodiscard]] base::Id aircraft_of_subject(const facts::Journal& journal, base::Id subject);

}  // namespace twoclocks::canvas
