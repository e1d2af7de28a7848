// What the views are printed as JSON with.
#pragma once

#include <string>
#include <utility>

#include "engine/base/region.hpp"
#include "engine/facts/json.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// Builds an object member by member.
class Object {
  public:
    explicit Object(const base::Region& region) : region_(region) {}

    Object& text(std::string_view key, std::string text) {
        facts::Json value;
        value.type = facts::Json::Type::text;
        value.text = std::move(text);
        return put(key, std::move(value));
    }

    Object& said(std::string_view key, const base::Message& message) {
        return text(key, base::say(message, region_));
    }

    /// The figure, and beside it that it is questioned, where it is.
    Object& said(std::string_view key, const Told& told) {
        said(key, told.text);
        return questioned(std::string{key} + "_questioned", told.questioned);
    }

    Object& questioned(std::string_view key, bool is) { return is ? truth(key, true) : *this; }

    Object& whole(std::string_view key, std::int64_t number) {
        facts::Json value;
        value.type = facts::Json::Type::whole;
        value.whole = number;
        return put(key, std::move(value));
    }

    Object& truth(std::string_view key, bool truth) {
        facts::Json value;
        value.type = facts::Json::Type::boolean;
        value.truth = truth;
        return put(key, std::move(value));
    }

    Object& put(std::string_view key, facts::Json value) {
        json_.members.emplace_back(std::string{key}, std::move(value));
        return *this;
    }

    [[nodiscard]] facts::Json take() { return std::move(json_); }

  private:
    const base::Region& region_;
    facts::Json json_;
};

/// What is made of each thing of a list.
/// Units: none. Errors: none. Source: our choice.
template <class List, class Make>
[[nodiscard]] facts::Json list_of(const List& list, Make make) {
    facts::Json out;
    out.type = facts::Json::Type::list;
    for (const auto& one : list)
        out.items.push_back(make(one));
    return out;
}

/// A text; an edge of the life box; a why; a figure with its why.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json text_json(std::string text);

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string_view edge_word(Edge edge);

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] facts::Json why_json(const Why& why, const base::Region& region);

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] facts::Json figure_json(const Figure& figure, const base::Region& region);

/// Sentences.
/// Units: text as a person reads it. Errors: none. Source: our choice.
[[nodiscard]] facts::Json said_json(const std::vector<base::Message>& lines,
                                    const base::Region& region);

/// A chart.
/// Units: text as a person reads it, thousandths. Errors: none. Source: our choice.
[[nodiscard]] facts::Json chart_json(const ChartView& chart, const base::Region& region);

}  // namespace twoclocks::views
