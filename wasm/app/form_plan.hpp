// What the forms of a campaign share: figures as they are typed, read back, and signed.
#pragma once

#include "wasm/app/form_fields.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {

/// What stands in a field before it is typed in; empty where nothing is recorded.
[[nodiscard]] std::string typed(const std::optional<std::int32_t>& whole);
[[nodiscard]] std::string typed(const std::optional<base::Date>& date);
[[nodiscard]] std::string typed(const std::optional<base::FlightTime>& time);
/// Thousandths as per cent.
[[nodiscard]] std::string typed_percent(const std::optional<std::int32_t>& permille);

/// A whole number that is not above the most; otherwise the field complains.
[[nodiscard]] std::optional<std::int32_t> count_in(FieldReader& reader,
                                                   const char* id,
                                                   std::int32_t most);
/// Days, up to ten years.
[[nodiscard]] std::optional<std::int32_t> days_in(FieldReader& reader, const char* id);
/// Per cent with one decimal, as thousandths, up to a whole.
[[nodiscard]] std::optional<std::int32_t> share_in(FieldReader& reader, const char* id);

/// Complains at `low` where only some of three days are given, at `likely` where they are in
/// disorder.
template <class Kind>
void check_points(FieldReader& reader,
                  const char* low,
                  const char* likely,
                  const Kind& kind,
                  const std::string& name) {
    const int given =
        (kind.low_days ? 1 : 0) + (kind.likely_days ? 1 : 0) + (kind.high_days ? 1 : 0);
    if (given == 1 || given == 2)
        reader.complain(low, base::Trouble::plan_task_days_missing, {base::text_arg(name)});
    if (given == 3 && (*kind.low_days > *kind.likely_days || *kind.likely_days > *kind.high_days))
        reader.complain(likely, base::Trouble::task_out_of_order, {base::text_arg(name)});
}

/// The routes of the aircraft.
[[nodiscard]] const std::vector<timeline::RouteState>& routes_in(const FormContext& context);

/// The currency that was used last for a route, or the euro.
[[nodiscard]] base::Currency usual_currency(const FormContext& context);

/// A record about the aircraft of the form, of a day or of today.
[[nodiscard]] facts::Fact signed_on(base::Date on,
                                    const Form& form,
                                    facts::Fields fields,
                                    const FormContext& context,
                                    Signer& signer);
[[nodiscard]] std::vector<facts::Fact> signed_today(const Form& form,
                                                    facts::Fields fields,
                                                    const FormContext& context,
                                                    Signer& signer);

}  // namespace twoclocks::canvas
