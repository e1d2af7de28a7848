// A part's state as one text, to tell two states apart.
#pragma once

#include <optional>
#include <string>

#include "engine/timeline/parts.hpp"

namespace twoclocks::support {

[[nodiscard]] inline std::string told(const std::optional<base::FlightTime>& time) {
    return time ? std::to_string(time->seconds) : std::string{"?"};
}

[[nodiscard]] inline std::string told(const std::optional<base::Count>& count) {
    return count ? std::to_string(count->value) : std::string{"?"};
}

[[nodiscard]] inline std::string told(const timeline::PartSpell& spell) {
    return base::print_date(spell.from) + '>' +
           (spell.until ? base::print_date(*spell.until) : std::string{}) + ' ' +
           base::print_id(spell.host) + ' ' + told(spell.from_total) + '>' + told(spell.to_total) +
           '=' + told(spell.gained) + (spell.from_estimated ? " ~" : " ") +
           (spell.to_estimated ? "~" : "") + (spell.keeps_status ? "=" : "");
}

[[nodiscard]] inline std::string told(const timeline::PartState& part) {
    std::string out = base::print_id(part.id) + ' ' + part.part_number + ' ' + part.serial +
                      " tsn " + told(part.tsn) + (part.tsn_estimated ? "~" : "") + " tso " +
                      told(part.tso) + (part.tso_estimated ? "~" : "") + ' ' + told(part.landings) +
                      ' ' + told(part.starts) + ' ' + std::to_string(part.overhauls_recorded) +
                      ' ' + std::to_string(static_cast<int>(part.whereabouts)) + ' ' +
                      base::print_id(part.host) + ' ' + base::print_id(part.aircraft) + ' ' +
                      std::to_string(part.questions.size());
    for (const timeline::PartSpell& spell : part.spells)
        out += "\n  " + told(spell);
    for (const timeline::UsagePoint& point : part.flown)
        out += ' ' + std::to_string(point.total.seconds);
    for (const timeline::PartProblem& problem : part.problems) {
        out += "\n  ";
        out += base::name_of(problem.code);
        for (const base::Id& fact : problem.facts)
            out += ' ' + base::print_id(fact);
    }
    return out;
}

}  // namespace twoclocks::support
