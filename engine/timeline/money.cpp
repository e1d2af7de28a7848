#include "engine/timeline/money.hpp"

#include <algorithm>

#include "engine/base/order.hpp"

namespace twoclocks::timeline {
namespace {

void fold_line(const Record& record,
               const facts::CostLine& said,
               std::vector<CostLineState>& lines) {
    const auto found = std::find_if(lines.begin(), lines.end(), [&](const CostLineState& one) {
        return one.said.line == said.line;
    });
    CostLineState now{said, record.in_use.on, record.root};
    if (found == lines.end())
        lines.push_back(std::move(now));
    else
        *found = std::move(now);
}

void put_row(const facts::PriceRow& row, std::vector<facts::PriceRow>& rows) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const facts::PriceRow& one) {
        return one.article == row.article;
    });
    if (found == rows.end())
        rows.push_back(row);
    else
        *found = row;
}

void fold_list(const Record& record, const facts::PriceList& said, MoneyState& money) {
    const auto rows = facts::parse_price_rows(said.rows);
    if (!rows) return;  // no record that was checked
    const auto found =
        std::find_if(money.lists.begin(), money.lists.end(), [&](const PriceListState& one) {
            return one.list == said.list && one.on == record.in_use.on;
        });
    PriceListState& version =
        found == money.lists.end()
            ? money.lists.emplace_back(PriceListState{said.list, record.in_use.on, {}, {}, {}})
            : *found;
    for (const facts::PriceRow& row : rows.value())
        put_row(row, version.rows);
    version.said_by = said.said_by;
    version.fact = record.root;
}

void drop_left_out(std::vector<CostLineState>& lines) {
    std::erase_if(lines, [](const CostLineState& one) { return one.said.left_out; });
}

}  // namespace

void fold_money(const std::vector<const Record*>& records,
                base::Date today,
                std::optional<base::Date> ended,
                AircraftState& state) {
    MoneyState& money = state.money;
    for (const Record* record : records) {
        const facts::Body& body = record->in_use;
        if (record->withdrawn || body.on > today) continue;
        if (const auto* line = std::get_if<facts::CostLine>(&body.fields))
            fold_line(*record, *line, ended && body.on < *ended ? money.past : money.lines);
        if (const auto* list = std::get_if<facts::PriceList>(&body.fields))
            fold_list(*record, *list, money);
        if (const auto* rate = std::get_if<facts::ExchangeRate>(&body.fields))
            money.rates.push_back({*rate, body.on, record->root});
        if (const auto* terms = std::get_if<facts::CostTerms>(&body.fields)) {
            money.terms = *terms;
            money.terms_fact = record->root;
        }
    }
    drop_left_out(money.lines);
    drop_left_out(money.past);
    base::sort_stably(money.lists, [](const PriceListState& one, const PriceListState& other) {
        return one.list != other.list ? one.list < other.list : one.on < other.on;
    });
}

}  // namespace twoclocks::timeline
