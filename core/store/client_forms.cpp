#include "core/store/client_forms.h"

#include "core/base/enum_keys.h"
#include "core/exchange/field_test_json.h"
#include "core/exchange/health_intake_json.h"
#include "core/exchange/movement_screen_json.h"
#include "core/exchange/plan_draft_json.h"
#include "core/exchange/profile_json.h"
#include "core/store/form_rows.h"
#include "core/store/profile_rows.h"
#include "core/store/statement.h"

#include <QJsonDocument>

namespace chalk::store {

namespace {

constexpr std::array<std::string_view, 6> kFormKeys{"profile", "health_intake", "body_measures", "movement_screen", "field_tests", "starting_plan"};

/// A form that is no longer what it was written as: the file is damaged, and says where.
template <class T>
Result<T> readForm(const Database& database, base::ClientId client, FormKind kind, const exchange::JsonResult<T>& read)
{
    if (read) {
        return *read;
    }
    const QString place = QStringLiteral("%1 of client %2, %3").arg(QString::fromUtf8(keyOf(kind).data())).arg(client.value()).arg(QString::fromStdString(read.error().field));
    return storeError(StoreError::Kind::Damaged,
                      QStringLiteral("%1 is damaged: %2 %3").arg(database.target(), place, QString::fromStdString(read.error().reason)));
}

}  // namespace

std::string_view keyOf(FormKind kind)
{
    return base::keyIn(kFormKeys, kind);
}

Result<std::optional<Form>> ClientForms::latest(base::ClientId client, FormKind kind)
{
    const auto forms = all(client, kind);
    if (!forms) {
        return tl::make_unexpected(forms.error());
    }
    return forms->empty() ? std::optional<Form>() : std::optional(forms->back());
}

Result<std::vector<Form>> ClientForms::all(base::ClientId client, FormKind kind)
{
    const Snapshot snapshot(m_database);
    std::vector<Form> forms;
    Statement rows(m_database, QStringLiteral("SELECT day, is_finished, detail, id FROM form WHERE client_id = ? AND kind = ? ORDER BY day, id"));
    rows.run(client, keyOf(kind));
    while (rows.next()) {
        forms.push_back({rows.date(0), rows.number(1) == 1, QJsonDocument::fromJson(rows.opened(2, rows.sealedRow("form", rows.integer(3)), "detail").toUtf8()).object()});
    }
    return m_database.resultOf(std::move(forms));
}

Result<clients::Profile> ClientForms::profile(base::ClientId client)
{
    const auto form = latest(client, FormKind::Profile);
    if (!form || !*form) {
        return form ? Result<clients::Profile>(clients::Profile()) : tl::make_unexpected(form.error());
    }
    return readForm(m_database, client, FormKind::Profile, exchange::readProfile((*form)->detail, {}));
}

Result<std::optional<clients::HealthIntake>> ClientForms::healthIntake(base::ClientId client)
{
    const auto form = latest(client, FormKind::HealthIntake);
    if (!form) {
        return tl::make_unexpected(form.error());
    }
    if (!*form) {
        return std::optional<clients::HealthIntake>();
    }
    return readForm(m_database, client, FormKind::HealthIntake, exchange::readHealthIntake((*form)->detail, {}))
        .map([](clients::HealthIntake intake) { return std::optional(std::move(intake)); });
}

Result<std::optional<screens::MovementScreen>> ClientForms::movementScreen(base::ClientId client)
{
    const auto screens = movementScreens(client);
    if (!screens) {
        return tl::make_unexpected(screens.error());
    }
    return screens->empty() ? std::optional<screens::MovementScreen>() : std::optional(screens->back());
}

Result<std::vector<screens::MovementScreen>> ClientForms::movementScreens(base::ClientId client)
{
    const auto forms = all(client, FormKind::MovementScreen);
    if (!forms) {
        return tl::make_unexpected(forms.error());
    }
    std::vector<screens::MovementScreen> screens;
    for (const Form& form : *forms) {
        auto screen = readForm(m_database, client, FormKind::MovementScreen, exchange::readMovementScreen(form.detail, {}));
        if (!screen) {
            return tl::make_unexpected(screen.error());
        }
        screens.push_back(*std::move(screen));
    }
    return screens;
}

Result<std::vector<screens::FieldTestDay>> ClientForms::fieldTests(base::ClientId client)
{
    const auto forms = all(client, FormKind::FieldTests);
    if (!forms) {
        return tl::make_unexpected(forms.error());
    }
    std::vector<screens::FieldTestDay> days;
    for (const Form& form : *forms) {
        auto day = readForm(m_database, client, FormKind::FieldTests, exchange::readFieldTestDay(form.detail, {}));
        if (!day) {
            return tl::make_unexpected(day.error());
        }
        days.push_back(*std::move(day));
    }
    return days;
}

Result<planning::PlanDraft> ClientForms::planDraft(base::ClientId client)
{
    const auto form = latest(client, FormKind::StartingPlan);
    if (!form || !*form) {
        return form ? Result<planning::PlanDraft>(planning::PlanDraft()) : tl::make_unexpected(form.error());
    }
    return readForm(m_database, client, FormKind::StartingPlan, exchange::readPlanDraft((*form)->detail, {}));
}

Result<std::vector<clients::BodyMeasures>> ClientForms::measures(base::ClientId client)
{
    const auto forms = all(client, FormKind::BodyMeasures);
    if (!forms) {
        return tl::make_unexpected(forms.error());
    }
    std::vector<clients::BodyMeasures> measures;
    for (const Form& form : *forms) {
        auto read = readForm(m_database, client, FormKind::BodyMeasures, exchange::readBodyMeasures(form.detail, {}));
        if (!read) {
            return tl::make_unexpected(read.error());
        }
        // A day that was measured again after its form was closed has two: the later one counts.
        if (!measures.empty() && measures.back().date == read->date) {
            measures.back() = *std::move(read);
        } else {
            measures.push_back(*std::move(read));
        }
    }
    return measures;
}

std::vector<Letter> ClientForms::readLetters(base::ClientId client, bool withCopies)
{
    std::vector<Letter> letters;
    Statement rows(m_database, QStringLiteral("SELECT written_by, day, valid_until_day, limits, findings, file_name, %1, id FROM letter WHERE client_id = ? "
                                              "ORDER BY day, id")
                                   .arg(withCopies ? QStringLiteral("file") : QStringLiteral("NULL")));
    rows.run(client);
    while (rows.next()) {
        letters.push_back(letterOf(rows));
    }
    return letters;
}

Result<std::vector<Letter>> ClientForms::letters(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    auto letters = readLetters(client, false);
    return m_database.resultOf(std::move(letters));
}

Result<std::optional<Letter>> ClientForms::latestLetter(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    auto letters = readLetters(client, true);
    auto last = letters.empty() ? std::optional<Letter>() : std::optional(std::move(letters.back()));
    return m_database.resultOf(std::move(last));
}

}  // namespace chalk::store
