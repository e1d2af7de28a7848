#include "wasm/app/form_plan.hpp"

namespace twoclocks::canvas {
namespace {

[[nodiscard]] std::optional<std::int32_t> at_most(FieldReader& reader,
                                                  const char* id,
                                                  const std::optional<std::int64_t>& told,
                                                  std::int32_t most) {
    if (!told) return std::nullopt;
    if (*told > most) {
        reader.complain(id, base::Trouble::form_too_large, {base::whole_arg(most)});
        return std::nullopt;
    }
    return static_cast<std::int32_t>(*told);
}

}  // namespace

std::string typed(const std::optional<std::int32_t>& whole) {
    return whole ? std::to_string(*whole) : std::string{};
}

std::string typed(const std::optional<base::Date>& date) {
    return date ? base::print_date(*date) : std::string{};
}

std::string typed(const std::optional<base::FlightTime>& time) {
    return time ? tenths_text(*time) : std::string{};
}

std::string typed_percent(const std::optional<std::int32_t>& permille) {
    return permille ? typed_tenths(*permille) : std::string{};
}

std::optional<std::int32_t> count_in(FieldReader& reader, const char* id, std::int32_t most) {
    return at_most(reader, id, reader.whole(id), most);
}

std::optional<std::int32_t> days_in(FieldReader& reader, const char* id) {
    return count_in(reader, id, facts::most_plan_days);
}

std::optional<std::int32_t> share_in(FieldReader& reader, const char* id) {
    return at_most(reader, id, reader.decimal(id, 1), facts::whole_permille);
}

const std::vector<timeline::RouteState>& routes_in(const FormContext& context) {
    static const std::vector<timeline::RouteState> none;
    return context.aircraft == nullptr ? none : context.aircraft->campaign.routes;
}

base::Currency usual_currency(const FormContext& context) {
    base::Currency out;
    for (const timeline::RouteState& one : routes_in(context))
        if (one.said.price) out = one.said.price->currency;
    return out;
}

facts::Fact signed_on(base::Date on,
                      const Form& form,
                      facts::Fields fields,
                      const FormContext& context,
                      Signer& signer) {
    facts::Body body{on, {form.aircraft}, std::move(fields), {}};
    return signer.sign(signer.new_id(), std::move(body), context.journal);
}

std::vector<facts::Fact> signed_today(const Form& form,
                                      facts::Fields fields,
                                      const FormContext& context,
                                      Signer& signer) {
    return {signed_on(context.today, form, std::move(fields), context, signer)};
}

}  // namespace twoclocks::canvas
