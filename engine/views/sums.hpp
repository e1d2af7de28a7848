// What the pages of cores, of cash and of the reserve show: figures at the top, then blocks of
// rows. Plain structs of words and figures, nothing left to compute.
#pragma once

#include <array>

#include "engine/views/views.hpp"

namespace twoclocks::views {

/// Which of them.
enum class SumsOf : std::uint8_t { cores, cash, reserve, sale, compare, closing };

/// The title of the page, which names the aircraft.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] inline base::Word sums_title(SumsOf of) {
    constexpr std::array words{base::Word::cores_title,
                               base::Word::cash_title,
                               base::Word::reserve_title,
                               base::Word::sale_title,
                               base::Word::compare_title,
                               base::Word::closing_title};
    return words[static_cast<std::size_t>(of)];
}

/// What a row opens.
enum class SumsOpens : std::uint8_t {
    nothing,
    core_step,
    pay_term,
    payment,
    balance,
    holder,
    item_price,
    sale,
    closing
};

/// One row: what it is, its figure, what more there is to say.
struct SumsRow {
    std::string key;  // of the record that it opens
    base::Message name;
    base::Message figure{base::Word::blank, {}};
    std::vector<base::Message> lines{};
    std::vector<base::Problem> notes{};
};

/// What it is, more of it below, and a figure at the right.
struct SumsPair {
    base::Message name;
    base::Message figure;
    base::Message below{base::Word::blank, {}};
};

/// Money in hand over time at one pace of the plan: steps from left to right, thousandths of the
/// picture, 0 at its left and its bottom.
struct SumsStep {
    std::int32_t across{0};
    std::int32_t up{0};
};

/// The three paces in one picture.
struct SumsCurve {
    std::vector<SumsStep> early;
    std::vector<SumsStep> likely;
    std::vector<SumsStep> late;
    std::int32_t nothing{0};  // how far up nothing in hand lies
    base::Message most;       // at the top
    base::Message least;      // at the bottom
    base::Message first;      // month at the left
    base::Message last;       // month at the right
    base::Message spoken;     // the picture in one sentence
};

/// A stretch of the page.
struct SumsBlock {
    base::Message title;
    std::vector<base::Message> lines{};
    std::optional<SumsCurve> curve{};
    std::vector<SumsPair> pairs{};
    std::vector<SumsRow> rows{};
    SumsOpens opens{SumsOpens::nothing};
};

/// One page.
struct SumsView {
    base::Id id;
    std::string registration;
    SumsOf of{SumsOf::cores};
    base::Message missing{base::Word::blank, {}};  // nothing is recorded yet
    std::vector<Figure> top;                       // the last is the answer
    std::vector<base::Message> told;               // below it
    std::vector<base::Problem> faults;
    std::vector<SumsBlock> blocks;
    std::vector<base::Message> notes;
};

/// Every "why?" of the page, in the order of its figures.
/// Units: none. Errors: none. Source: none needed.
[[nodiscard]] inline std::vector<Why> whys_of(const SumsView& view) {
    std::vector<Why> out;
    for (const Figure& figure : view.top)
        out.push_back(figure.why);
    return out;
}

}  // namespace twoclocks::views
