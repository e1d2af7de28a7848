#include "engine/budget/options.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/timeline/directive_serials.hpp"

namespace twoclocks::budget {
namespace {

using base::Trouble;
using facts::CostFor;
using facts::CostLine;
using facts::CostTaken;

[[nodiscard]] bool is_asked(const CostLine& line, const EstimateFor& asked) {
    const bool of_route = line.route.empty() || line.route == asked.route;
    const bool is_overhaul = asked.work == facts::PlanWork::overhaul;
    const CostFor fits = is_overhaul ? CostFor::overhaul : CostFor::calendar_work;
    return of_route && (line.work == CostFor::either || line.work == fits);
}

/// The words of a list with spaces between.
[[nodiscard]] std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> out;
    std::string word;
    for (const char sign : text + ' ') {
        if (sign != ' ') {
            word += sign;
            continue;
        }
        if (!word.empty()) out.push_back(word);
        word.clear();
    }
    return out;
}

/// The settling while it goes on.
class Settling {
  public:
    Settling(Settled& settled, const EstimateFor& asked) : settled_(settled), asked_(asked) {}

    void run() {
        for (std::size_t place = 0; place < settled_.lines.size(); ++place)
            fit_serial(place);
        drop_excluded();
        drop_needing();
        for (std::size_t place = 0; place < settled_.lines.size(); ++place)
            count_choices(place);
    }

  private:
    [[nodiscard]] const CostLine& said(std::size_t place) const {
        return settled_.lines[place]->said;
    }

    void drop(std::size_t place, Trouble code, std::vector<base::Arg> args) {
        settled_.counts[place] = false;
        settled_.why[place].push_back(base::trouble(code, std::move(args)));
    }

    /// The line of that key, if it counts; also its name where it does not.
    [[nodiscard]] const CostLine* counted(const std::string& key) const {
        for (std::size_t place = 0; place < settled_.lines.size(); ++place)
            if (settled_.counts[place] && said(place).line == key) return &said(place);
        return nullptr;
    }

    [[nodiscard]] base::Arg named(const std::string& key) const {
        for (const timeline::CostLineState* line : settled_.lines)
            if (line->said.line == key) return name_of(line->said);
        return base::text_arg(key);
    }

    void fit_serial(std::size_t place) {
        const CostLine& line = said(place);
        if (!settled_.counts[place] || line.serials.empty()) return;
        if (timeline::serials_say(line.serials, asked_.serial) == timeline::Says::names_this)
            return;
        drop(place,
             Trouble::option_serial,
             {name_of(line), base::text_arg(asked_.serial), base::text_arg(line.serials)});
    }

    void drop_excluded() {
        for (std::size_t place = 0; place < settled_.lines.size(); ++place) {
            if (!settled_.counts[place]) continue;
            for (const std::string& key : words_of(said(place).excludes)) {
                const CostLine* other = counted(key);
                if (other == nullptr || other == &said(place)) continue;
                drop(place, Trouble::option_excludes, {name_of(said(place)), name_of(*other)});
                break;
            }
        }
    }

    /// What is needed may itself lack something: until nothing changes.
    void drop_needing() {
        bool changed = true;
        while (changed) {
            changed = false;
            for (std::size_t place = 0; place < settled_.lines.size(); ++place) {
                if (!settled_.counts[place]) continue;
                const std::vector<std::string> keys = words_of(said(place).needs);
                const auto lacking =
                    std::find_if(keys.begin(), keys.end(), [&](const std::string& key) {
                        return counted(key) == nullptr;
                    });
                if (lacking == keys.end()) continue;
                drop(place, Trouble::option_needs, {name_of(said(place)), named(*lacking)});
                changed = true;
            }
        }
    }

    /// At the first line of each choice: how many were chosen.
    void count_choices(std::size_t place) {
        const std::string& choice = said(place).one_of;
        if (choice.empty()) return;
        std::int32_t chosen = 0;
        for (std::size_t other = 0; other < settled_.lines.size(); ++other) {
            if (said(other).one_of != choice) continue;
            if (other < place) return;
            if (said(other).taken != CostTaken::offered) ++chosen;
        }
        if (chosen == 1) return;
        settled_.faults.push_back(
            base::trouble(chosen == 0 ? Trouble::option_unsettled : Trouble::option_twice,
                          {base::text_arg(choice)}));
    }

    Settled& settled_;
    const EstimateFor& asked_;
};

}  // namespace

Settled settle(const std::vector<timeline::CostLineState>& lines, const EstimateFor& asked) {
    Settled out;
    for (const timeline::CostLineState& line : lines) {
        if (!is_asked(line.said, asked)) continue;
        out.lines.push_back(&line);
        out.counts.push_back(line.said.taken != CostTaken::offered);
    }
    out.why.resize(out.lines.size());
    Settling{out, asked}.run();
    return out;
}

}  // namespace twoclocks::budget
