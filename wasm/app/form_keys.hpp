// What forms share that change one of several records by its key: which one, and keys of others.
#pragma once

#include "wasm/app/form_fields.hpp"
#include "wasm/app/limit_fields.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace twoclocks::canvas {

/// The list of those there are, with a new one first.
template <class State, class Name>
void add_which(
    Form& form, const char* id, base::Word label, const std::vector<State>& all, Name name_of) {
    FieldView list = make_choice(id, label, {base::Word::field_new_route}, 0);
    for (const State& one : all)
        list.options.push_back({base::Word::record_of, {name_of(one)}});
    form.fields.push_back(std::move(list));
}

/// The one chosen in the list at the top; null for a new one.
template <class State>
[[nodiscard]] const State* chosen_in(const Form& form, const std::vector<State>& all) {
    const std::int32_t place = form.fields.front().chosen - 1;
    const bool is_one = place >= 0 && place < static_cast<std::int32_t>(all.size());
    return is_one ? &all[static_cast<std::size_t>(place)] : nullptr;
}

/// Chooses the one of a key in that list; false where there is none.
template <class State, class Key>
[[nodiscard]] bool choose_in(Form& form,
                             const std::vector<State>& all,
                             Key key_of,
                             const std::string& key) {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const State& one) { return key_of(one) == key; });
    if (found == all.end()) return false;
    form.fields.front().chosen = static_cast<std::int32_t>(found - all.begin()) + 1;
    return true;
}

/// A choice in the place of a field that holds a key; its first option is none.
template <class Rows, class Key, class Name>
void choose_key(
    Form& form, const char* id, base::Word none, const Rows& rows, Key key_of, Name name_of) {
    FieldView* field = find_field(form, id);
    if (field == nullptr) return;
    FieldView list = make_choice(id, base::Word::blank, {none}, 0);
    list.label = field->label;
    list.optional = true;
    for (const auto& row : rows) {
        if (key_of(row) == field->text)
            list.chosen = static_cast<std::int32_t>(list.options.size());
        list.options.push_back({base::Word::record_of, {name_of(row)}});
    }
    *field = std::move(list);
}

/// What stands at a choice that choose_key made.
template <class Rows, class Key>
[[nodiscard]] std::string chosen_key(FieldReader& reader,
                                     const char* id,
                                     const Rows& rows,
                                     Key key_of) {
    const std::int32_t place = reader.choice(id) - 1;
    const bool is_one = place >= 0 && place < static_cast<std::int32_t>(rows.size());
    return is_one ? key_of(rows[static_cast<std::size_t>(place)]) : std::string{};
}

}  // namespace twoclocks::canvas
