#include "ui/onboarding/field_tests_page.h"

#include "core/exchange/field_test_json.h"
#include "core/store/client_forms.h"
#include "core/store/client_writer.h"
#include "ui/common/day_entry.h"
#include "ui/common/look.h"
#include "ui/common/scroll_column.h"
#include "ui/common/settling.h"
#include "ui/onboarding/field_test_row.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/typing_pause.h"

#include <QFrame>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr std::size_t kMostEarlier = 4;

/// One of each, in the order of the page.
const std::array<screens::FieldTest, 6>& fieldTestKinds()
{
    static const std::array<screens::FieldTest, 6> kinds{screens::ChairStand{},      screens::PushUps{},           screens::SingleLegStance{},
                                                         screens::Plank{},           screens::WeightBearingLunge{}, screens::SitAndReach{}};
    return kinds;
}

const screens::FieldTest* testIn(const screens::FieldTestDay& day, const screens::FieldTest& test)
{
    const auto found = std::find_if(day.tests.begin(), day.tests.end(), [&test](const screens::FieldTest& one) { return one.index() == test.index(); });
    return found == day.tests.end() ? nullptr : &*found;
}

}  // namespace

FieldTestsPage::FieldTestsPage(store::Database& database, common::Dialogs& dialogs, const common::Look& look, QWidget* parent)
    : QWidget(parent),
      m_database(database),
      m_dialogs(dialogs),
      m_look(look),
      m_scroll(new QScrollArea(this)),
      m_why(new QLabel(this)),
      m_pause(typingPause(this)),
      m_watch(new Stopwatch(this))
{
    build();
    watchStopwatch();
    connect(m_pause, &QTimer::timeout, this, &FieldTestsPage::save);
}

void FieldTestsPage::build()
{
    auto* contents = new QWidget;
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(0, 4, 0, 8);
    column->setSpacing(0);
    m_why->setProperty("role", QStringLiteral("secondary"));
    m_why->setWordWrap(true);
    m_why->setContentsMargins(20, 10, 20, 6);
    column->addWidget(m_why);
    for (const screens::FieldTest& test : fieldTestKinds()) {
        if (!m_rows.empty()) {
            auto* line = new QFrame(contents);
            line->setProperty("rule", true);
            line->setFixedHeight(1);
            column->addWidget(line);
        }
        auto* row = new FieldTestRow(m_look, test, contents);
        connect(row, &FieldTestRow::typed, m_pause, qOverload<>(&QTimer::start));
        connect(row, &FieldTestRow::given, this, &FieldTestsPage::save);
        for (QLineEdit* field : row->fields()) {
            field->installEventFilter(this);
        }
        column->addWidget(row);
        m_rows.push_back(row);
    }
    column->addStretch(1);
    common::holdColumn(*m_scroll, contents);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_scroll);
}

void FieldTestsPage::watchStopwatch()
{
    connect(m_watch, &Stopwatch::ticked, this, [this] {
        if (m_timed != nullptr) {
            m_timed->showRunning(m_watch->isRunning() ? std::optional(m_watch->elapsedMs()) : std::nullopt);
        }
    });
}

FieldTestPerson FieldTestsPage::personOn(base::Date day) const
{
    return {m_client.birthDate && *m_client.birthDate <= day ? std::optional(base::ageOn(*m_client.birthDate, day)) : std::nullopt, m_sex};
}

std::optional<screens::FieldTest> FieldTestsPage::keptOf(const screens::FieldTest& test) const
{
    std::optional<screens::FieldTest> kept;
    for (const screens::FieldTestDay& day : m_days) {
        if (const screens::FieldTest* result = testIn(day, test); result != nullptr && day.date == m_today) {
            kept = *result;
        }
    }
    return kept;
}

QStringList FieldTestsPage::earlierLines(const screens::FieldTest& test) const
{
    QStringList lines;
    for (auto day = m_days.rbegin(); day != m_days.rend() && lines.size() < static_cast<qsizetype>(kMostEarlier); ++day) {
        const screens::FieldTest* result = testIn(*day, test);
        if (result != nullptr && day->date != m_today) {
            lines.append(tr("%1: %2. %3").arg(common::entryOfDay(day->date), fieldTestResultText(*result), verdictOf(*result, personOn(day->date)).headline));
        }
    }
    return lines;
}

void FieldTestsPage::setCase(const OnboardingCase& onboarding, bool canKeep)
{
    if (onboarding.client.id != m_client.id || onboarding.today != m_today) {
        m_pause->stop();
        dropStopwatch();
        for (FieldTestRow* row : m_rows) {
            for (QLineEdit* field : row->fields()) {
                field->clear();
            }
        }
    }
    m_client = onboarding.client;
    m_sex = onboarding.profile.sex;
    m_today = onboarding.today;
    m_canKeep = canKeep;
    auto days = store::ClientForms(m_database).fieldTests(m_client.id);
    if (!days) {
        m_canKeep = false;
        Q_EMIT refused(days.error().message);
    }
    m_days = std::move(days).value_or(std::vector<screens::FieldTestDay>());
    QString why = tr("Optional. Results of today, compared with published norms by age and sex. Another day begins its own.");
    if (!m_canKeep) {
        why = tr("Nothing is tested before health data may be kept and nothing holds the client back.");
    }
    m_why->setText(why);
    for (FieldTestRow* row : m_rows) {
        row->setEnabled(m_canKeep);
    }
    showDays();
}

void FieldTestsPage::showDays()
{
    for (FieldTestRow* row : m_rows) {
        const auto kept = keptOf(row->test());
        row->setResult(kept, personOn(m_today));
        row->setEarlier(earlierLines(row->test()));
        if (kept) {
            continue;
        }
        FieldTestTyped last;
        last.isOther = std::holds_alternative<screens::PushUps>(row->test()) && m_sex == clients::NormSex::Female;
        for (const screens::FieldTestDay& day : m_days) {
            if (const screens::FieldTest* result = testIn(day, row->test())) {
                last = typedOf(*result);
            }
        }
        if (!std::holds_alternative<screens::SitAndReach>(row->test())) {
            last.second.clear();
        }
        if (std::holds_alternative<screens::ChairStand>(row->test())) {
            last.isOther = false;
        }
        row->suggest(last);
    }
}

store::Result<void> FieldTestsPage::write(screens::FieldTestDay day)
{
    const auto kept = std::find_if(m_days.rbegin(), m_days.rend(), [this](const screens::FieldTestDay& one) { return one.date == m_today; });
    const QJsonObject seen = kept == m_days.rend() ? QJsonObject() : exchange::toJson(*kept);
    return common::settled(m_dialogs, m_database, seen, [&](const common::Settling& settling) {
        day = settling.merged ? exchange::readFieldTestDay(*settling.merged, {}).value_or(day) : day;
        return store::ClientWriter(m_database).saveFieldTests(m_client.id, day, m_today, settling.seen);
    });
}

bool FieldTestsPage::save()
{
    m_pause->stop();
    screens::FieldTestDay day;
    day.date = m_today;
    screens::FieldTestDay before = day;
    for (const FieldTestRow* row : m_rows) {
        const auto kept = keptOf(row->test());
        const auto result = row->result();
        if (const auto& now = result ? *result : kept) {
            day.tests.push_back(*now);
        }
        if (kept) {
            before.tests.push_back(*kept);
        }
    }
    if (!m_canKeep || exchange::toJson(day) == exchange::toJson(before)) {
        return true;
    }
    const auto written = write(day);
    if (!written && written.error().kind != store::StoreError::Kind::Conflict) {
        Q_EMIT refused(written.error().message);
        return false;
    }
    Q_EMIT saved();
    return true;
}

bool FieldTestsPage::keep()
{
    dropStopwatch();
    return save();
}

void FieldTestsPage::takeFocus()
{
    const auto open = std::find_if(m_rows.begin(), m_rows.end(), [](const FieldTestRow* row) { return row->fields().front()->text().isEmpty(); });
    FieldTestRow* row = open == m_rows.end() ? m_rows.front() : *open;
    row->fields().front()->setFocus(Qt::OtherFocusReason);
    m_scroll->ensureWidgetVisible(row);
}

void FieldTestsPage::toggleStopwatch()
{
    if (m_watch->isRunning()) {
        FieldTestRow* row = m_timed;
        const int elapsed = m_watch->stop() / 100 * 100;
        m_timed = nullptr;
        row->setTime(elapsed);
        row->fields().front()->setFocus(Qt::OtherFocusReason);
        return;
    }
    if (!m_canKeep) {
        return;
    }
    const auto isFree = [](const FieldTestRow* row) { return isTimed(row->test()) && row->fields().front()->text().isEmpty(); };
    auto row = std::find_if(m_rows.begin(), m_rows.end(), [](const FieldTestRow* one) { return isTimed(one->test()) && one->fields().front()->hasFocus(); });
    row = row != m_rows.end() ? row : std::find_if(m_rows.begin(), m_rows.end(), isFree);
    if (row == m_rows.end()) {
        return;
    }
    m_timed = *row;
    m_scroll->ensureWidgetVisible(m_timed);
    m_watch->start();
}

bool FieldTestsPage::dropStopwatch()
{
    const bool wasRunning = m_watch->isRunning();
    m_watch->stop();
    m_timed = nullptr;
    return wasRunning;
}

void FieldTestsPage::setNow(Stopwatch::Now now)
{
    delete m_watch;
    m_timed = nullptr;
    m_watch = new Stopwatch(this, std::move(now));
    watchStopwatch();
}

void FieldTestsPage::move(QObject* from, int by)
{
    std::vector<QLineEdit*> fields;
    for (const FieldTestRow* row : m_rows) {
        fields.insert(fields.end(), row->fields().begin(), row->fields().end());
    }
    const auto here = std::find(fields.begin(), fields.end(), from);
    const auto to = here - fields.begin() + by;
    if (here != fields.end() && to >= 0 && to < static_cast<std::ptrdiff_t>(fields.size())) {
        fields[static_cast<std::size_t>(to)]->setFocus(Qt::TabFocusReason);
        m_scroll->ensureWidgetVisible(fields[static_cast<std::size_t>(to)]->parentWidget());
    }
}

bool FieldTestsPage::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress || (static_cast<QKeyEvent*>(event)->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        return QWidget::eventFilter(watched, event);
    }
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Up:
        move(watched, -1);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        save();
        move(watched, 1);
        return true;
    case Qt::Key_Down:
        move(watched, 1);
        return true;
    case Qt::Key_T:
        toggleStopwatch();
        return true;
    default:
        return QWidget::eventFilter(watched, event);
    }
}

}  // namespace chalk::ui::onboarding
