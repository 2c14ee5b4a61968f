#include "ui/onboarding/pattern_sheet.h"

#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/scroll_column.h"
#include "ui/common/segmented_choice.h"
#include "ui/onboarding/marked_choice.h"
#include "ui/onboarding/pause_card.h"
#include "ui/onboarding/rescreen_words.h"
#include "ui/onboarding/start_words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QToolButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kNoPain = 0;
constexpr int kYesPain = 1;
constexpr int kPainScores = 10;

QLabel* headingLabel(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("strong"));
    label->setContentsMargins(0, 10, 0, 4);
    return label;
}

std::vector<common::Segment> painScores()
{
    std::vector<common::Segment> scores;
    for (int score = 0; score <= kPainScores; ++score) {
        scores.push_back({QString::number(score), common::Signal::Pain});
    }
    return scores;
}

}  // namespace

PatternSheet::PatternSheet(const common::Look& look, const screens::PatternGuide& guide, int pauseMs, QWidget* parent)
    : QWidget(parent), m_look(look), m_guide(guide), m_scroll(new QScrollArea(this)), m_watch(new Stopwatch(this))
{
    auto* contents = new QWidget;
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(14, 14, 14, 14);
    column->setSpacing(2);
    addHead(*column);
    addPoints(*column);
    addPauses(*column, pauseMs);
    addPain(*column);
    column->addWidget(headingLabel(tr("Note"), contents));
    m_note = new QPlainTextEdit(contents);
    m_note->setAccessibleName(tr("Note"));
    m_note->setTabChangesFocus(true);
    m_note->setFixedHeight(m_note->fontMetrics().lineSpacing() * 2 + 22);
    connect(m_note, &QPlainTextEdit::textChanged, this, &PatternSheet::typed);
    column->addWidget(m_note);
    column->addStretch(1);
    common::holdColumn(*m_scroll, contents);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_scroll);
    connect(m_watch, &Stopwatch::ticked, this, [this] {
        m_pauses[m_timed]->showRunning(m_watch->isRunning() ? std::optional(m_watch->elapsedMs()) : std::nullopt);
    });
}

void PatternSheet::addHead(QVBoxLayout& column)
{
    auto* title = new QLabel(common::patternName(m_guide.pattern), this);
    title->setProperty("role", QStringLiteral("section"));
    auto* how = new QLabel(common::qstring(m_guide.how) + QLatin1Char(' ') + common::qstring(m_guide.look), this);
    how->setProperty("role", QStringLiteral("secondary"));
    how->setWordWrap(true);
    how->setMinimumWidth(1);
    column.addWidget(title);
    column.addWidget(how);
    column.addSpacing(4);
}

void PatternSheet::addPoints(QVBoxLayout& column)
{
    for (std::size_t i = 0; i < m_guide.points.size(); ++i) {
        const screens::ScreenPoint& point = m_guide.points[i];
        auto* row = new QHBoxLayout;
        row->setContentsMargins(0, 5, 0, 5);
        auto* number = new QLabel(QString::number(i + 1), this);
        number->setProperty("role", QStringLiteral("muted"));
        number->setFixedWidth(18);
        auto* text = new QLabel(common::qstring(point.text), this);
        text->setWordWrap(true);
        text->setMinimumWidth(1);
        auto* view = new QLabel(viewName(point.from), this);
        view->setProperty("role", QStringLiteral("muted"));
        auto* choice = new common::SegmentedChoice(common::qstring(point.text), {{tr("Met"), common::Signal::Ok}, {tr("Partly"), common::Signal::Warn}, {tr("Not met")}}, this);
        connect(choice, &common::SegmentedChoice::choiceMade, this, &PatternSheet::marked);
        row->addWidget(number);
        row->addWidget(text, 1);
        row->addWidget(view);
        row->addSpacing(8);
        row->addWidget(choice);
        column.addLayout(row);
        m_points.push_back(choice);
        m_views.push_back(view);
        auto* keys = new MarkedChoice(*choice);
        connect(keys, &MarkedChoice::moveAsked, this, [this, i](int by) { move(i, by); });
        m_keys.push_back(keys);
    }
}

void PatternSheet::addPauses(QVBoxLayout& column, int pauseMs)
{
    column.addWidget(headingLabel(tr("Pause and hold, %1 s or more · T: stopwatch").arg(pauseMs / 1000.0), this));
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    for (const screens::PauseDepth depth : screens::kPauseDepths) {
        auto* card = new PauseCard(m_look, m_guide.depths[static_cast<std::size_t>(depth)], depth, this);
        connect(card, &PauseCard::changed, this, &PatternSheet::marked);
        row->addWidget(card, 1);
        m_pauses.push_back(card);
        const std::size_t index = m_keys.size();
        connect(&card->keys(), &MarkedChoice::moveAsked, this, [this, index](int by) { move(index, by); });
        m_keys.push_back(&card->keys());
    }
    column.addLayout(row);
    auto* more = new QHBoxLayout;
    more->setContentsMargins(0, 8, 0, 0);
    m_steadiness = new common::SegmentedChoice(tr("The whole movement"), {{tr("Steady"), common::Signal::Ok}, {tr("Shaky"), common::Signal::Warn}, {tr("Lost")}}, this);
    m_reps = new QLineEdit(this);
    m_reps->setPlaceholderText(tr("as asked"));
    m_reps->setAccessibleName(tr("Repetitions done"));
    m_reps->setFixedWidth(qRound(m_look.theme().scaled(88)));
    more->addWidget(new QLabel(tr("As a whole"), this));
    more->addWidget(m_steadiness);
    more->addStretch(1);
    more->addWidget(new QLabel(tr("Reps done"), this));
    more->addWidget(m_reps);
    column.addLayout(more);
    connect(m_steadiness, &common::SegmentedChoice::choiceMade, this, &PatternSheet::marked);
    connect(m_reps, &QLineEdit::editingFinished, this, &PatternSheet::marked);
}

void PatternSheet::addPain(QVBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 10, 0, 0);
    m_pain = new common::SegmentedChoice(tr("Pain"), {{tr("No")}, {tr("Yes"), common::Signal::Pain}}, this);
    auto* name = new QLabel(tr("Pain"), this);
    name->setProperty("role", QStringLiteral("strong"));
    auto* hint = new QLabel(tr("If yes: where, and how much out of 10"), this);
    hint->setProperty("role", QStringLiteral("muted"));
    hint->setWordWrap(true);
    hint->setMinimumWidth(1);
    row->setSpacing(10);
    row->addWidget(name);
    row->addWidget(m_pain);
    row->addWidget(hint, 1);
    column.addLayout(row);
    m_painDetail = new QWidget(this);
    auto* detail = new QVBoxLayout(m_painDetail);
    detail->setContentsMargins(0, 6, 0, 0);
    m_painPlace = new QLineEdit(m_painDetail);
    m_painPlace->setPlaceholderText(tr("Where"));
    m_painPlace->setAccessibleName(tr("Where it hurts"));
    m_painScore = new common::SegmentedChoice(tr("How much out of 10"), painScores(), m_painDetail);
    m_painScore->setCompact();
    for (QToolButton* button : m_painScore->findChildren<QToolButton*>()) {
        button->installEventFilter(this);  // runs before the choice's own
    }
    detail->addWidget(m_painPlace);
    detail->addWidget(m_painScore, 0, Qt::AlignLeft);
    column.addWidget(m_painDetail);
    m_painDetail->hide();
    connect(m_pain, &common::SegmentedChoice::choiceMade, this, [this] {
        showPain();
        Q_EMIT marked();
    });
    connect(m_painPlace, &QLineEdit::textEdited, this, &PatternSheet::typed);
    connect(m_painPlace, &QLineEdit::editingFinished, this, &PatternSheet::marked);
    connect(m_painScore, &common::SegmentedChoice::choiceMade, this, &PatternSheet::marked);
}

void PatternSheet::showPain()
{
    m_painDetail->setVisible(m_pain->chosen() == kYesPain);
    if (m_pain->chosen() == kYesPain) {
        m_painPlace->setFocus(Qt::OtherFocusReason);
        QTimer::singleShot(0, this, [this] { reveal(m_painDetail); });  // once it is laid out
    }
}

void PatternSheet::setScreen(const screens::PatternScreen& screen)
{
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        const auto mark = std::find_if(screen.points.begin(), screen.points.end(), [&](const screens::PointMark& one) { return one.key == m_guide.points[i].key; });
        m_points[i]->setChosen(mark == screen.points.end() ? -1 : static_cast<int>(mark->mark) - 1);
    }
    for (const screens::PauseDepth depth : screens::kPauseDepths) {
        m_pauses[static_cast<std::size_t>(depth)]->setTry(screen.pauseAt(depth));
    }
    m_steadiness->setChosen(screen.steadiness ? static_cast<int>(*screen.steadiness) : -1);
    if (!m_reps->hasFocus()) {
        m_reps->setText(screen.reps ? QString::number(screen.reps->value()) : QString());
    }
    const bool isNone = screen.pain && screen.pain->place.empty() && screen.pain->score == 0;
    m_pain->setChosen(isNone ? kNoPain : screen.pain ? kYesPain : -1);
    m_painDetail->setVisible(screen.pain && !isNone);
    if (!m_painPlace->hasFocus()) {
        m_painPlace->setText(screen.pain ? common::qstring(screen.pain->place) : QString());
    }
    m_painScore->setChosen(screen.pain && screen.pain->score && !isNone ? *screen.pain->score : -1);
    if (!m_note->hasFocus() && m_note->toPlainText() != common::qstring(screen.note)) {
        const QSignalBlocker quiet(m_note);
        m_note->setPlainText(common::qstring(screen.note));
    }
}

void PatternSheet::setEarlier(const screens::PatternScreen* earlier)
{
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        const screens::ScreenPoint& point = m_guide.points[i];
        QString words = viewName(point.from);
        if (earlier != nullptr) {
            const auto mark = std::find_if(earlier->points.begin(), earlier->points.end(), [&point](const screens::PointMark& one) { return one.key == point.key; });
            if (mark != earlier->points.end() && mark->mark != screens::Mark::NotJudged) {
                words = tr("%1 · was %2").arg(words, markWord(mark->mark));
            }
        }
        m_views[i]->setText(words);
        m_points[i]->setAccessibleDescription(words);
    }
}

bool PatternSheet::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress && m_painScore->isAncestorOf(qobject_cast<QWidget*>(watched))) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const int score = key->key() - Qt::Key_0;
        if ((key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier && score >= 0 && score < kPainScores) {
            m_painScore->findChildren<QToolButton*>().at(score)->click();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

screens::PatternScreen PatternSheet::screen() const
{
    screens::PatternScreen screen;
    screen.pattern = m_guide.pattern;
    for (std::size_t i = 0; i < m_points.size(); ++i) {
        screen.points.push_back({m_guide.points[i].key, static_cast<screens::Mark>(m_points[i]->chosen() + 1)});
    }
    for (const screens::PauseDepth depth : screens::kPauseDepths) {
        screen.pauseAt(depth) = m_pauses[static_cast<std::size_t>(depth)]->pause();
    }
    if (m_steadiness->chosen() >= 0) {
        screen.steadiness = static_cast<screens::MovementSteadiness>(m_steadiness->chosen());
    }
    bool isNumber = false;
    if (const int reps = m_reps->text().trimmed().toInt(&isNumber); isNumber && reps >= 0 && reps <= screens::kMostScreenReps) {
        screen.reps = base::Reps(reps);
    }
    if (m_pain->chosen() == kYesPain) {
        screen.pain = screens::ScreenPain{m_painPlace->text().trimmed().toStdString(), m_painScore->chosen() >= 0 ? std::optional(m_painScore->chosen()) : std::nullopt};
    } else if (m_pain->chosen() == kNoPain) {
        screen.pain = screens::ScreenPain{{}, 0};  // asked, and there is none
    }
    screen.note = m_note->toPlainText().trimmed().toStdString();
    return screen;
}

void PatternSheet::reveal(QWidget* part)
{
    m_scroll->ensureWidgetVisible(part, 0, 40);
}

void PatternSheet::move(std::size_t from, int by)
{
    const auto to = static_cast<std::ptrdiff_t>(from) + by;
    if (to >= 0 && to < static_cast<std::ptrdiff_t>(m_keys.size())) {
        m_keys[static_cast<std::size_t>(to)]->takeFocus();
        reveal(focusWidget() == nullptr ? this : focusWidget());
    }
}

void PatternSheet::takeFocus()
{
    const screens::PatternScreen marks = screen();
    const auto open = std::find_if(marks.points.begin(), marks.points.end(), [](const screens::PointMark& one) { return one.mark == screens::Mark::NotJudged; });
    if (open != marks.points.end()) {
        return m_keys[static_cast<std::size_t>(open - marks.points.begin())]->takeFocus();
    }
    for (const screens::PauseDepth depth : screens::kPauseDepths) {
        if (marks.pauseAt(depth).mark == screens::PauseMark::NotTried) {
            return m_keys[m_points.size() + static_cast<std::size_t>(depth)]->takeFocus();
        }
    }
    m_keys.front()->takeFocus();
}

void PatternSheet::toggleStopwatch()
{
    if (m_watch->isRunning()) {
        const int elapsed = m_watch->stop();
        screens::PauseTry pause = m_pauses[m_timed]->pause();
        pause.heldMs = std::min(elapsed / 100 * 100, screens::kMostPauseMs);
        if (pause.mark == screens::PauseMark::NotTried) {
            pause.mark = screens::PauseMark::Held;
        }
        m_pauses[m_timed]->setTry(pause);
        m_keys[m_points.size() + m_timed]->takeFocus();
        Q_EMIT marked();
        return;
    }
    const auto focused = std::find_if(m_pauses.begin(), m_pauses.end(), [](const PauseCard* card) { return card->hasFocusInside() && !card->pause().heldMs; });
    const auto next = focused != m_pauses.end() ? focused : std::find_if(m_pauses.begin(), m_pauses.end(), [](const PauseCard* card) { return !card->pause().heldMs; });
    m_timed = next == m_pauses.end() ? 0 : static_cast<std::size_t>(next - m_pauses.begin());
    reveal(m_pauses[m_timed]);
    m_watch->start();
}

bool PatternSheet::dropStopwatch()
{
    const bool wasRunning = m_watch->isRunning();
    m_watch->stop();
    return wasRunning;
}

void PatternSheet::askForPain()
{
    if (m_pain->chosen() != kYesPain) {
        m_pain->setChosen(kYesPain);
        Q_EMIT marked();
    }
    showPain();
}

void PatternSheet::setNow(Stopwatch::Now now)
{
    delete m_watch;
    m_watch = new Stopwatch(this, std::move(now));
    connect(m_watch, &Stopwatch::ticked, this, [this] {
        m_pauses[m_timed]->showRunning(m_watch->isRunning() ? std::optional(m_watch->elapsedMs()) : std::nullopt);
    });
}

}  // namespace chalk::ui::onboarding
