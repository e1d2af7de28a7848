#include "engine/facts/fields.hpp"

#include <utility>

#include "engine/facts/field_list.hpp"

namespace twoclocks::facts {
namespace {

using MakeFields = Fields (*)();

template <std::size_t Index>
[[nodiscard]] Fields make_fields() {
    return Fields{std::in_place_index<Index>};
}

template <std::size_t... Index>
[[nodiscard]] constexpr auto all_makers(std::index_sequence<Index...>) {
    return std::array<MakeFields, sizeof...(Index)>{&make_fields<Index>...};
}

constexpr auto makers = all_makers(std::make_index_sequence<std::variant_size_v<Fields>>{});

}  // namespace

Fields empty_fields(const std::string& word) {
    for (std::size_t index = 1; index < kind_words.size(); ++index) {
        if (kind_words[index] == word) return makers[index]();
    }
    return UnknownKind{word};
}

void visit_fields(FieldTeller& teller, const Fields& fields) {
    std::visit([&](const auto& one) { visit<FieldTeller>(teller, one); }, fields);
}

void visit_fields(FieldTaker& taker, Fields& fields) {
    std::visit([&](auto& one) { visit<FieldTaker>(taker, one); }, fields);
}

void visit_fields(FieldTeller& teller, const LimitSet& limit) {
    visit<FieldTeller>(teller, limit);
}

void visit_fields(FieldTaker& taker, LimitSet& limit) {
    visit<FieldTaker>(taker, limit);
}

void visit_fields(FieldTaker& taker, ItemAdded& item) {
    visit<FieldTaker>(taker, item);
}

}  // namespace twoclocks::facts
