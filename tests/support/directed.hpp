// Directives on the gearbox and the aircraft of stores.hpp. On 2024-03-01 ISLE-1 has 1,100.0 h, now
// it has 1,160.0 h.
#pragma once

#include "tests/support/hung.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/timeline/directives.hpp"
#include "engine/views/assess.hpp"

namespace twoclocks::support {

/// A limit of class directive, in hours and months; 0 is none of them.
[[nodiscard]] inline facts::LimitSet directed(std::int64_t whole_hours, std::int32_t months = 0) {
    facts::LimitSet out = limit(whole_hours, months);
    out.limit_class = facts::LimitClass::directive;
    return out;
}

/// A directive that applies and took effect on a day.
[[nodiscard]] inline facts::Directive effective(const std::string& number, const char* on) {
    facts::Directive out = directive(number);
    out.effective_on = day(on);
    return out;
}

/// The same, in the place of another item.
[[nodiscard]] inline facts::Directive instead_of(const facts::Fact& item,
                                                 facts::Directive directive,
                                                 bool credit = false) {
    directive.replaces = {item.id};
    directive.credit = credit;
    return directive;
}

struct Directed : Hung {
    /// An item of an aircraft or a part, with no limit where none is given.
    facts::Fact asks(base::Id bearer, const char* name, std::optional<facts::LimitSet> limit = {}) {
        const facts::Fact out = keep(ann.add(
            day("2024-01-01"), {bearer}, facts::ItemAdded{name, facts::ItemRole::other, {}}));
        if (limit) keep(ann.write(day("2024-01-01"), {bearer, out.id}, std::move(*limit)));
        return out;
    }

    facts::Fact told(base::Id bearer,
                     const facts::Fact& item,
                     facts::Directive directive,
                     const char* on = "2024-01-01") {
        return keep(ann.write(day(on), {bearer, item.id}, std::move(directive)));
    }

    /// Both at once.
    facts::Fact rests(base::Id bearer, facts::Directive directive, facts::LimitSet limit) {
        const facts::Fact out = asks(bearer, directive.number.c_str(), std::move(limit));
        told(bearer, out, std::move(directive));
        return out;
    }

    facts::Fact means(base::Id bearer,
                      const facts::Fact& item,
                      facts::AlternativeMeans means,
                      const char* on = "2024-02-01") {
        means.issuer = "Authority";
        means.reference = "M 3";
        return keep(ann.write(day(on), {bearer, item.id}, std::move(means)));
    }

    void disagree(const facts::Fact& fact, facts::Fields one, facts::Fields other) {
        keep(ann.correct(fact, std::move(one)));
        keep(ben.correct(fact, std::move(other)));
    }

    [[nodiscard]] views::Assessed assessed(base::Id aircraft) const {
        return views::assess(timeline::replay(journal, aircraft, today),
                             today,
                             timeline::parts_of(journal, aircraft, today));
    }

    [[nodiscard]] std::size_t place_of(const views::Assessed& aircraft,
                                       const facts::Fact& item) const {
        std::size_t place = 0;
        while (place < aircraft.items.size() && aircraft.items[place].item != item.id)
            ++place;
        return place;
    }

    /// What is due of an item of ISLE-1 or of what is on it.
    [[nodiscard]] limits::ItemDue here(const facts::Fact& item) const {
        const views::Assessed aircraft = assessed(first);
        return aircraft.items.at(place_of(aircraft, item));
    }

    [[nodiscard]] views::State state_of(const facts::Fact& item) const {
        const views::Assessed aircraft = assessed(first);
        return aircraft.item_states.at(place_of(aircraft, item));
    }

    /// Where a directive stands, in one word, with the hours that are left of it in tenths.
    [[nodiscard]] std::string stands(const facts::Fact& item) const { return told_of(here(item)); }

    [[nodiscard]] static std::string told_of(const limits::ItemDue& due) {
        constexpr std::array words{
            "open", "before flight", "complied", "ended", "superseded", "not here", "unknown"};
        std::string out =
            due.directive ? words.at(static_cast<std::size_t>(due.directive->standing)) : "none";
        const limits::ClockDue* hours = limits::clock_of(due, facts::Clock::hours);
        if (hours == nullptr) return out;
        constexpr std::int64_t tenth = 360;
        return out + ' ' + (hours->known ? std::to_string(hours->left.seconds / tenth) : "?");
    }

    /// Codes of what is to be looked at on ISLE-1.
    [[nodiscard]] std::string cautions() const {
        std::string out;
        for (const timeline::Caution& one : timeline::replay(journal, first, today).cautions)
            out += (out.empty() ? "" : " ") + std::string{base::name_of(one.code)};
        return out;
    }
};

}  // namespace twoclocks::support
