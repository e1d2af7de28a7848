#include "wasm/pages.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Message;
using base::Word;

template <class... Each>
struct Cases : Each... {
    using Each::operator()...;
};
template <class... Each>
Cases(Each...) -> Cases<Each...>;

Message as_told(const std::string& words) {
    return {Word::as_told, {base::text_arg(words)}};
}

/// A title that names the aircraft.
Message titled(Word title, const std::string& registration) {
    return {title, {base::text_arg(registration)}};
}

}  // namespace

Message title_of(const Page& page) {
    return std::visit(
        Cases{
            [](const WelcomePage&) {
                return Message{Word::product_name, {}};
            },
            [](const views::FleetView&) {
                return Message{Word::tab_fleet, {}};
            },
            [](const views::AircraftView& view) { return as_told(view.registration); },
            [](const LogPage& log) {
                return log.pad ? as_told(log.pad->view.registration) : Message{Word::title_log, {}};
            },
            [](const views::HistoryView& view) {
                if (view.registration.empty()) return Message{Word::tab_history, {}};
                return Message{Word::title_history_of, {base::text_arg(view.registration)}};
            },
            [](const FilesPage&) {
                return Message{Word::tab_files, {}};
            },
            [](const FormPage& form) { return form.title; },
            [](const RecordSheet& record) { return record.row.what; },
            [](const ChecksPage& checks) {
                return titled(Word::title_checks_of, checks.view.registration);
            },
            [](const views::StatusView& view) {
                return titled(Word::title_status_of, view.registration);
            },
            [](const ReturnPage& back) {
                return titled(Word::title_on_return, back.view.registration);
            },
            [](const SurePage& sure) { return titled(Word::title_sure, sure.view.registration); },
            [](const PlanPage& plan) { return titled(Word::title_plan, plan.view.registration); },
            [](const WorkingPage& working) { return working.title; },
            [](const RoutesPage& routes) {
                return titled(Word::routes_title, routes.view.registration);
            },
            [](const MoneyPage& money) {
                return titled(Word::money_title, money.view.registration);
            },
            [](const SumsPage& sums) {
                return titled(sums_title(sums.view.of), sums.view.registration);
            },
            [](const StaggerPage&) {
                return Message{Word::stagger_title, {}};
            },
            [](const PartsPage& parts) {
                const std::string& registration = parts.view.registration;
                if (registration.empty()) return Message{Word::title_parts, {}};
                return Message{Word::title_parts_of, {base::text_arg(registration)}};
            },
            [](const PartPage& part) { return part.view.name; },
            [](const SpecimenPage&) {
                return Message{Word::title_specimen, {}};
            },
            [](const NothingChosenPage&) {
                return Message{Word::blank, {}};
            }},
        page);
}

float width_of(const Page& page, float whole) {
    const bool roomy = whole >= page::two_columns_from + 2 * space::base;
    return std::visit(
        Cases{[](const WelcomePage&) { return page::reading_most; },
              [](const views::FleetView& view) {
                  return view.cards.empty() ? page::reading_most : page::spread_most;
              },
              [&](const views::AircraftView&) {
                  return roomy ? page::spread_most : page::column_most;
              },
              [&](const LogPage& log) {
                  if (!log.pad) return page::column_most;
                  return roomy ? page::pad_most : page::reading_most;
              },
              [](const views::HistoryView&) { return page::column_most; },
              [](const ChecksPage&) { return page::column_most; },
              [](const views::StatusView&) { return page::column_most; },
              [](const ReturnPage&) { return page::column_most; },
              [&](const SurePage&) { return roomy ? page::spread_most : page::column_most; },
              [&](const PlanPage&) { return roomy ? page::spread_most : page::column_most; },
              [&](const WorkingPage&) { return roomy ? page::spread_most : page::column_most; },
              [&](const RoutesPage&) { return roomy ? page::spread_most : page::column_most; },
              [&](const MoneyPage&) { return roomy ? page::spread_most : page::column_most; },
              [&](const SumsPage&) { return roomy ? page::spread_most : page::column_most; },
              [](const StaggerPage&) { return page::column_most; },
              [](const PartsPage&) { return page::column_most; },
              [&](const PartPage&) { return roomy ? page::spread_most : page::column_most; },
              [](const SpecimenPage&) { return page::column_most; },
              [&](const FilesPage&) { return roomy ? page::spread_most : page::column_most; },
              [](const auto&) { return page::reading_most; }},
        page);
}

bool is_root(const Page& page) {
    if (const auto* log = std::get_if<LogPage>(&page)) return !log->pad;
    if (const auto* all = std::get_if<views::HistoryView>(&page)) return all->registration.empty();
    return std::holds_alternative<views::FleetView>(page) ||
           std::holds_alternative<FilesPage>(page);
}

Answer draw_page(Ui& ui, const Rect& area, const Page& page, ListPane pane) {
    return std::visit(
        Cases{[&](const WelcomePage&) { return welcome_panel(ui, area); },
              [&](const views::FleetView& view) { return fleet_panel(ui, area, view, pane); },
              [&](const views::AircraftView& view) { return aircraft_panel(ui, area, view); },
              [&](const LogPage& view) { return log_panel(ui, area, view, pane); },
              [&](const views::HistoryView& view) { return history_panel(ui, area, view, pane); },
              [&](const FilesPage& view) { return files_panel(ui, area, view); },
              [&](const FormPage& view) { return form_panel(ui, area, view); },
              [&](const RecordSheet& view) { return record_panel(ui, area, view); },
              [&](const ChecksPage& view) { return checks_panel(ui, area, view); },
              [&](const views::StatusView& view) { return status_panel(ui, area, view); },
              [&](const ReturnPage& view) { return return_panel(ui, area, view); },
              [&](const SurePage& view) { return sure_panel(ui, area, view); },
              [&](const PlanPage& view) { return plan_panel(ui, area, view); },
              [&](const WorkingPage& view) { return working_panel(ui, area, view); },
              [&](const RoutesPage& view) { return routes_panel(ui, area, view); },
              [&](const MoneyPage& view) { return money_panel(ui, area, view); },
              [&](const SumsPage& view) { return sums_panel(ui, area, view); },
              [&](const StaggerPage& view) { return stagger_panel(ui, area, view); },
              [&](const PartsPage& view) { return parts_panel(ui, area, view); },
              [&](const PartPage& view) { return part_panel(ui, area, view); },
              [&](const SpecimenPage& view) { return specimen_panel(ui, area, view); },
              [&](const NothingChosenPage& view) { return nothing_chosen_panel(ui, area, view); }},
        page);
}

}  // namespace twoclocks::canvas
