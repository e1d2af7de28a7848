// One random script for three simulated devices: edits, answers, files handed over and joined,
// clocks that jump, disks that fail. The last step passes every file round.
#pragma once

#include "catch_amalgamated.hpp"
#include "tests/app/simulated_device.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "engine/facts/parse.hpp"

namespace twoclocks::canvas::support {

constexpr std::int64_t day_ms = 86'400'000;

class Script {
  public:
    Script(std::uint64_t seed, std::int64_t steps) : random_(seed), steps_(steps) {
        for (std::uint64_t which = 0; which < 3; ++which)
            devices_.emplace_back("device-" + std::to_string(which), seed * 3 + which);
    }

    void run() {
        add_aircraft(devices_.front());
        devices_.front().settle(SaveFault::none);
        hand_over(devices_.front());
        for (std::int64_t step = 0; step < steps_; ++step) {
            const auto which = static_cast<std::size_t>(random_.between(0, 2));
            act(devices_[which]);
            check(devices_[which]);
        }
        finish();
    }

    std::int64_t saves{0};
    std::int64_t faults{0};
    std::int64_t exchanges{0};

  private:
    void act(SimulatedDevice& device) {
        if (random_.once_in(4)) device.hear_late();
        switch (random_.between(0, 12)) {
            case 0:
                add_aircraft(device);
                break;
            case 1:
            case 2:
            case 3:
                save_reading(device);
                break;
            case 4:
                take_back(device);
                break;
            case 5:
                answer(device);
                break;
            case 6:
                hand_over(device);
                break;
            case 7:
            case 8:
            case 9:
                join(device);
                break;
            case 10:
                turn_a_batch(device);
                break;
            case 11:
                device.move_clock(random_.between(1, 40) * day_ms);
                if (random_.once_in(8)) device.move_clock(3653 * day_ms);
                if (random_.once_in(8)) device.move_clock(-3653 * day_ms);
                break;
            default:
                trouble(device);
        }
        settle(device);
    }

    void settle(SimulatedDevice& device) {
        constexpr std::array fates{SaveFault::refused,
                                    SaveFault::unheard,
                                    SaveFault::late,
                                    SaveFault::killed,
                                    SaveFault::torn};
        const bool asked = !device.host().asked.empty();
        saves += asked ? 1 : 0;
        if (!asked || !random_.once_in(3)) {
            device.settle(SaveFault::none);
            return;
        }
        ++faults;
        device.settle(fates[static_cast<std::size_t>(random_.between(0, 4))]);
    }

    void trouble(SimulatedDevice& device) {
        ++faults;
        switch (random_.between(0, 3)) {
            case 0:
                device.damage();
                break;
            case 1:
                device.damage_snapshot();
                break;
            default:
                device.restart();
        }
    }

    void add_aircraft(SimulatedDevice& device) {
        ++made_;
        AppState& app = device.app();
        app.apply(intent::OpenForm{FormKind::new_aircraft, {}});
        app.field_text("registration", "SIM-" + std::to_string(made_));
        app.field_text("limit_hours", "2200");
        app.field_text("limit_years", "12");
        app.field_text("anchor_on", "2016-06-15");
        app.field_text("reads", std::to_string(random_.between(0, 1500)));
        app.apply(intent::SubmitForm{});
    }

    [[nodiscard]] static std::vector<base::Id> aircraft_of(SimulatedDevice& device) {
        device.app().apply(intent::OpenFleet{});
        std::vector<base::Id> out;
        if (const auto* fleet = std::get_if<views::FleetView>(&device.app().screen().page)) {
            for (const views::AircraftCard& card : fleet->cards)
                out.push_back(card.id);
        }
        return out;
    }

    [[nodiscard]] std::optional<base::Id> any_aircraft(SimulatedDevice& device) {
        const std::vector<base::Id> all = aircraft_of(device);
        if (all.empty()) return std::nullopt;
        return all[static_cast<std::size_t>(
            random_.between(0, static_cast<std::int64_t>(all.size()) - 1))];
    }

    /// Mostly a little more than before; at times what another device contradicts.
    void save_reading(SimulatedDevice& device) {
        const auto aircraft = any_aircraft(device);
        if (!aircraft) return;
        AppState& app = device.app();
        app.apply(intent::OpenPad{*aircraft});
        hours_ += random_.between(0, 3);
        for (const char digit : std::to_string(1500 + hours_))
            app.apply(intent::PadKey{digit});
        app.apply(intent::SaveReading{});
    }

    void take_back(SimulatedDevice& device) {
        const std::vector<facts::Fact> known =
            facts::parse_journal(device.exported()).facts;
        if (known.empty()) return;
        const auto which = static_cast<std::size_t>(
            random_.between(0, static_cast<std::int64_t>(known.size()) - 1));
        // An aircraft that is gone takes everything else out of sight: seldom.
        if (std::holds_alternative<facts::AircraftAdded>(known[which].body.fields) &&
            !random_.once_in(10))
            return;
        device.app().apply(intent::WithdrawSaved{{known[which].id}});
    }

    void answer(SimulatedDevice& device) {
        const auto aircraft = any_aircraft(device);
        if (!aircraft) return;
        device.app().apply(intent::OpenAircraft{*aircraft});
        device.app().apply(
            intent::AnswerQuestion{0, static_cast<std::int32_t>(random_.between(0, 1))});
    }

    void hand_over(SimulatedDevice& device) { files_.push_back(device.exported()); }

    /// Any file that was ever handed over, also one's own, also a second time; at times cut off.
    void join(SimulatedDevice& device) {
        if (files_.empty()) return;
        ++exchanges;
        std::string file = files_[static_cast<std::size_t>(
            random_.between(0, static_cast<std::int64_t>(files_.size()) - 1))];
        if (random_.once_in(4))
            file.resize(static_cast<std::size_t>(
                random_.between(0, static_cast<std::int64_t>(file.size()))));
        device.app().file_chosen("exchanged.jsonl", file);
        device.app().apply(intent::AcceptImport{});
    }

    void turn_a_batch(SimulatedDevice& device) {
        device.app().apply(intent::OpenFiles{});
        const auto* files = std::get_if<FilesPage>(&device.app().screen().page);
        if (files == nullptr || files->batches.empty()) return;
        const BatchView& batch = files->batches[static_cast<std::size_t>(
            random_.between(0, static_cast<std::int64_t>(files->batches.size()) - 1))];
        const std::int32_t number = batch.number;
        if (batch.aside)
            device.app().apply(intent::TakeBack{number});
        else
            device.app().apply(intent::SetAside{number});
    }

    static void check(SimulatedDevice& device) {
        const Lines shown = lines_after_first(device.exported());
        REQUIRE(shown == device.model().shown());
    }

    /// Everything set aside is taken back, all answers arrive, all files go round.
    void finish() {
        Lines all;
        for (SimulatedDevice& device : devices_) {
            device.hear_late();
            take_all_back(device);
            check(device);
            all.merge(device.model().everything());
        }
        for (std::int32_t round = 0; round < 2; ++round) {
            for (SimulatedDevice& from : devices_) {
                const std::string file = from.exported();
                for (SimulatedDevice& to : devices_) {
                    to.app().file_chosen("last.jsonl", file);
                    to.app().apply(intent::AcceptImport{});
                    to.settle(SaveFault::none);
                }
            }
        }
        for (SimulatedDevice& device : devices_) {
            REQUIRE(device.exported() == devices_.front().exported());
            REQUIRE(lines_after_first(device.exported()) == all);
        }
    }

    static void take_all_back(SimulatedDevice& device) {
        device.app().apply(intent::OpenFiles{});
        const auto* files = std::get_if<FilesPage>(&device.app().screen().page);
        REQUIRE(files != nullptr);
        const std::vector<BatchView> batches = files->batches;
        for (const BatchView& batch : batches) {
            if (!batch.aside) continue;
            device.app().apply(intent::TakeBack{batch.number});
            device.settle(SaveFault::none);
        }
    }

    twoclocks::support::Random random_;
    std::int64_t steps_;
    std::vector<SimulatedDevice> devices_;
    std::vector<std::string> files_;
    std::int64_t hours_{0};
    std::int32_t made_{0};
};

}  // namespace twoclocks::canvas::support
