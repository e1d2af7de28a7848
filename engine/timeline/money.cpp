#include "engine/timeline/money.hpp"

#include <algorithm>
#include <map>
#include <utility>

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

/// An article said again has the price said last.
void put_rows(std::vector<facts::PriceRow> said, std::vector<facts::PriceRow>& rows) {
    std::map<std::string, std::size_t> places;
    for (std::size_t at = 0; at < rows.size(); ++at)
        places.emplace(rows[at].article, at);
    for (facts::PriceRow& row : said) {
        const auto [found, is_new] = places.emplace(row.article, rows.size());
        if (is_new)
            rows.push_back(std::move(row));
        else
            rows[found->second] = std::move(row);
    }
}

void fold_list(const Record& record, const facts::PriceList& said, MoneyState& money) {
    auto rows = facts::parse_price_rows(said.rows);
    if (!rows) return;  // no record that was checked
    put_list({said.list, record.in_use.on, std::move(rows.value()), said.said_by, record.root},
             money.lists);
}

void drop_left_out(std::vector<CostLineState>& lines) {
    std::erase_if(lines, [](const CostLineState& one) { return one.said.left_out; });
}

}  // namespace

void put_list(PriceListState said, std::vector<PriceListState>& lists) {
    const auto found = std::find_if(lists.begin(), lists.end(), [&](const PriceListState& one) {
        return one.list == said.list && one.on == said.on;
    });
    if (found != lists.end()) {
        put_rows(std::move(said.rows), found->rows);
        found->said_by = std::move(said.said_by);
        found->fact = said.fact;
        return;
    }
    std::vector<facts::PriceRow> rows;
    put_rows(std::exchange(said.rows, {}), rows);
    said.rows = std::move(rows);
    lists.push_back(std::move(said));
    base::sort_stably(lists, [](const PriceListState& one, const PriceListState& other) {
        return one.list != other.list ? one.list < other.list : one.on < other.on;
    });
}

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
}

}  // namespace twoclocks::timeline
