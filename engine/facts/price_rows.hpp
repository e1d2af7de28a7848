// The rows of a price list as text: article, price and name, a tab between, a line each.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/base/money.hpp"

namespace twoclocks::facts {

/// One row.
struct PriceRow {
    std::string article;
    base::Money price;
    std::string name;

    bool operator==(const PriceRow& other) const {
        return article == other.article && price == other.price && name == other.name;
    }
};

/// Reads rows in their one way of writing.
/// Units: minor units. Errors: list_row_wrong with the number of the row, list_empty, every one of
/// them. Source: journal.schema.json.
[[nodiscard]] base::Result<std::vector<PriceRow>> parse_price_rows(std::string_view text);

/// Writes them.
/// Units: minor units. Errors: none. Source: as above.
[[nodiscard]] std::string print_price_rows(const std::vector<PriceRow>& rows);

}  // namespace twoclocks::facts
