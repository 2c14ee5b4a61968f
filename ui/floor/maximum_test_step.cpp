#include "ui/floor/maximum_test_step.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/floor/maximum_test_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QShortcut>
#include <QSpinBox>
#include <QVBoxLayout>

namespace chalk::ui::floor {

/// The plates on one side of the bar; no room is taken where there is no bar.
class TestPlates : public QWidget {
public:
    TestPlates(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look) {}

    void setPlates(std::optional<common::PlateStackView> view)
    {
        m_view = std::move(view);
        setVisible(m_view.has_value());
        if (m_view) {
            setFixedHeight(qCeil(common::plateStackSize(*m_view, m_look.theme()).height()));
            setAccessibleName(common::plateStackText(*m_view));
        }
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        if (m_view) {
            QPainter painter(this);
            painter.setRenderHint(QPainter::Antialiasing);
            common::paintPlateStack(painter, rect(), *m_view, m_look.theme());
        }
    }

private:
    const common::Look& m_look;
    std::optional<common::PlateStackView> m_view;
};

MaximumTestStep::MaximumTestStep(const common::Look& look, const TestedLift& lift, RestServices rests, QWidget* parent)
    : QWidget(parent), m_look(look), m_lift(lift), m_watch(std::move(rests))
{
    build();
    connect(&m_watch, &RestWatch::changed, this, &MaximumTestStep::showRest);
}

QLabel* MaximumTestStep::addLine(const char* role)
{
    auto* label = new QLabel(this);
    label->setProperty("role", QLatin1String(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    layout()->addWidget(label);
    return label;
}

void MaximumTestStep::build()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_title = addLine("section");
    m_work = addLine("figure");
    m_plates = new TestPlates(m_look, this);
    column->addWidget(m_plates);
    m_setUp = addLine("secondary");
    m_rest = addLine("smallStrong");
    m_how = addLine("");
    m_stand = addLine("small");
    addFields();
    m_fault = addLine("fault");
    m_fault->hide();
    column->addStretch(1);
    addButtons();
}

void MaximumTestStep::addFields()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const auto label = [this, row](const QString& text, QWidget* buddy) {
        auto* one = new QLabel(text, this);
        one->setBuddy(buddy);
        row->addWidget(one);
        row->addWidget(buddy);
        buddy->installEventFilter(this);
        return one;
    };
    m_loads = new QComboBox(this);
    m_loads->setAccessibleName(tr("Load lifted"));
    for (const base::Load load : m_lift.machine.loads().loads()) {
        m_loads->addItem(testLoadText(m_lift, load), load.centi());
    }
    label(tr("Load"), m_loads);
    connect(m_loads, &QComboBox::currentIndexChanged, this, &MaximumTestStep::showLoad);
    m_reps = new QSpinBox(this);
    m_reps->setAccessibleName(tr("Repetitions made"));
    m_repsLabel = label(tr("Reps made"), m_reps);
    m_pain = new QSpinBox(this);
    m_pain->setRange(0, 10);
    m_pain->setAccessibleName(tr("Pain, 0 to 10"));
    label(tr("Pain, 0–10"), m_pain);
    row->addStretch(1);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

common::ActionButton* MaximumTestStep::addButton(const QString& text, const QString& key, QHBoxLayout* row, void (MaximumTestStep::*act)())
{
    auto* button = new common::ActionButton(m_look, text, this);
    button->setKeyText(key);
    row->addWidget(button);
    connect(button, &QPushButton::clicked, this, act);
    auto* shortcut = new QShortcut(QKeySequence(key), this);
    connect(shortcut, &QShortcut::activated, button, [button] {
        if (button->isVisible()) {
            button->click();
        }
    });
    return button;
}

void MaximumTestStep::addButtons()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    m_made = addButton(tr("Made"), QStringLiteral("M"), row, &MaximumTestStep::made);
    m_made->setKind(common::ButtonKind::Primary);
    m_missed = addButton(tr("Missed"), QStringLiteral("X"), row, &MaximumTestStep::missed);
    addButton(tr("Pain"), QStringLiteral("P"), row, &MaximumTestStep::hurt)->setKind(common::ButtonKind::Danger);
    row->addStretch(1);
    addButton(tr("Stop the test"), QStringLiteral("S"), row, &MaximumTestStep::stop);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void MaximumTestStep::showStep(const MaximumTestRun& run)
{
    m_kind = run.kind();
    m_set = run.next().value_or(chalk::direction::TestSet());
    m_title->setText(testStepText(run));
    m_how->setText(testHowText(run));
    m_stand->setText(testStandText(m_lift, run));
    m_reps->setRange(0, m_set.repsMost.value());
    m_reps->setValue(m_set.repsLeast.value());
    m_reps->setVisible(!isSingleAttempt());
    m_repsLabel->setVisible(!isSingleAttempt());
    m_made->setText(isSingleAttempt() ? tr("Made") : tr("Done"));
    m_missed->setVisible(isSingleAttempt());
    m_pain->setValue(0);
    m_fault->hide();
    m_loads->setCurrentIndex(std::max(0, m_loads->findData(m_set.load.centi())));
    showLoad();
    if (m_set.restLeast > base::Seconds(0)) {
        m_watch.start({m_lift.client, QString(), QString(), m_set.restLeast});
    }
    showRest();
    m_made->setFocus(Qt::OtherFocusReason);
}

base::Load MaximumTestStep::load() const
{
    return base::Load::fromCenti(m_loads->currentData().toInt());
}

void MaximumTestStep::showLoad()
{
    m_work->setText(QStringLiteral("%1 · %2").arg(testLoadText(m_lift, load()), testRepsText(m_set)));
    m_plates->setPlates(testPlatesOf(m_lift, load()));
    m_setUp->setText(testSetUpText(m_lift, load()));
    m_setUp->setVisible(!m_setUp->text().isEmpty());
}

QString MaximumTestStep::restWords() const
{
    const auto rests = m_watch.timers().rests();
    if (rests.empty()) {
        return testRestText(m_set);
    }
    const Rest& rest = rests.front();
    const QString now = rest.isOver ? tr("Ready since %1.").arg(common::restText(rest.over)) : tr("%1 of rest left.").arg(common::restText(rest.left));
    return QStringLiteral("%1 %2").arg(testRestText(m_set), now);
}

void MaximumTestStep::showRest()
{
    m_rest->setText(restWords());
    m_rest->setVisible(!m_rest->text().isEmpty());
}

void MaximumTestStep::made()
{
    Q_EMIT done({load(), isSingleAttempt() ? 1 : m_reps->value(), m_pain->value()});
}

void MaximumTestStep::missed()
{
    Q_EMIT done({load(), 0, m_pain->value()});
}

void MaximumTestStep::hurt()
{
    if (m_pain->value() == 0) {
        m_fault->setText(tr("Say how much it hurt, 1 to 10, then press Pain again. The test ends with it."));
        m_fault->show();
        m_pain->setFocus(Qt::OtherFocusReason);
        m_pain->selectAll();
        return;
    }
    Q_EMIT done({load(), isSingleAttempt() ? 0 : m_reps->value(), m_pain->value()});
}

bool MaximumTestStep::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key >= Qt::Key_A && key <= Qt::Key_Z) {
            event->ignore();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace chalk::ui::floor
