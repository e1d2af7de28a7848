// What is recorded of cores, of money that moves, and of the reserve. All about the aircraft.
//
// The hard questions.
//   What is a core? An old part that goes back for a credit, or one whose life is over and whose
//   destruction has to be proven. A later record of a core takes the place of the earlier one as a
//   whole; what happened to it are records of their own, and each of them stands.
//   What becomes of it? One of four outcomes, each with an amount and a chance: all of the credit,
//   a part of it, nothing, or a bill where the part is beyond repair.
//   What is in the reserve? The last balance of each account; earlier ones are its history.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/date.hpp"
#include "engine/base/money.hpp"
#include "engine/facts/cost_facts.hpp"

namespace twoclocks::facts {

/// What a core was found to be worth.
enum class CoreGrade : std::uint8_t { full, part, nothing, billed };

/// From when the days to return it run.
enum class CoreFrom : std::uint8_t { shipment, release };

/// How far a core is.
enum class CoreStage : std::uint8_t { off, sent, received, graded, settled, forfeited, destroyed };

/// With what a share of a price falls due.
enum class PaidAt : std::uint8_t { order, booking, shipment, stop, release, cores };

/// Whose share it is.
enum class HolderRole : std::uint8_t { owner, lessor };

/// One part that is to go back.
struct Core {
    std::string core;  // its key
    std::string name;
    std::string kit;           // with which it was charged
    std::string part_numbers;  // that are accepted
    std::string serial;        // of the one that goes back
    std::optional<base::Money> charge;
    std::optional<base::Money> best_credit;
    std::optional<base::Money> part_credit;
    std::optional<base::Money> bill;  // if it is beyond repair
    std::optional<std::int32_t> part_permille;
    std::optional<std::int32_t> nothing_permille;
    std::optional<std::int32_t> billed_permille;
    CoreFrom returns_from{CoreFrom::shipment};
    std::optional<std::int32_t> return_days;
    std::optional<base::Date> shipped_on;     // the kit
    std::optional<base::Date> return_by;      // instead of the days
    std::optional<std::int32_t> credit_days;  // from its way back to the credit
    bool log_card{false};                     // its history goes with it
    std::string lien;                         // who has a claim on it
    bool destroy{false};                      // its life is over: destroyed, not returned
    TaxCase tax{TaxCase::unknown};
    std::optional<std::int32_t> tax_permille;
    DutyRelief relief{DutyRelief::none};
    std::optional<base::Date> export_by;
    bool left_out{false};
    std::string said_by;
};

/// What happened to a core on the day of the record.
struct CoreStep {
    std::string core;
    CoreStage stage{CoreStage::off};
    std::optional<CoreGrade> grade;
    std::optional<base::Money> credit;
    std::optional<base::Money> billed;
    std::string reference;  // consignment, credit note, proof
};

/// A share of a price and when it is paid.
struct PayTerm {
    std::string term;  // its key
    std::string name;
    std::string line;                // the line it is of
    std::optional<CostGroup> group;  // or the group; neither: every line without terms of its own
    std::int32_t permille{0};
    PaidAt at{PaidAt::order};
    std::optional<std::int32_t> after_days;
    bool left_out{false};
    std::string said_by;
};

/// Money that was paid, or came back, on the day of the record.
struct Payment {
    std::string line;  // the line it is for; empty: none of them
    std::optional<base::Money> amount;
    bool back{false};
    std::string payee;
    std::string reference;
};

/// What was in an account on the day of the record.
struct Balance {
    std::string account;
    std::optional<base::Money> amount;
    std::string held_by;
};

/// What is set aside, and for how much.
struct ReserveTerms {
    std::optional<base::Money> hour;   // for each hour flown
    std::optional<base::Money> month;  // each month
    std::optional<base::Money> goal;   // at prices of the day of the record; missing: the estimate
    std::optional<std::int32_t> goal_rise_permille;  // a year
    std::optional<std::int32_t> interest_permille;   // a year
};

/// Whose aircraft it is, in shares.
struct Holder {
    std::string holder;
    HolderRole role{HolderRole::owner};
    std::int32_t permille{0};
    bool left_out{false};
};

}  // namespace twoclocks::facts
