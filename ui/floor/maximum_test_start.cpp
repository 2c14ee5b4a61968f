#include "ui/floor/maximum_test_start.h"

#include "ui/common/action_button.h"
#include "ui/common/direction_words.h"
#include "ui/floor/maximum_test_words.h"

#include <QCheckBox>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

QLabel* startLabel(const QString& text, const char* role, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QLatin1String(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

}  // namespace

MaximumTestStart::MaximumTestStart(const common::Look& look, const TestedLift& lift, QWidget* parent) : QWidget(parent), m_look(look)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    const QString none = noTestAtAllText(lift);
    if (!none.isEmpty()) {
        column->addWidget(startLabel(none, "", this));
        column->addStretch(1);
        return;
    }
    if (const QString noSingle = noSingleText(lift); !noSingle.isEmpty()) {
        column->addWidget(startLabel(noSingle, "", this));
    }
    column->addWidget(startLabel(tr("See to this first, and tick it off:"), "smallStrong", this));
    addChecks(lift);
    for (const QString& caution : common::heavyWorkCautions()) {
        column->addWidget(startLabel(caution, "secondary", this));
    }
    column->addStretch(1);
    addButtons(lift);
    readChecks();
}

void MaximumTestStart::addChecks(const TestedLift& lift)
{
    for (const QString& text : testChecks(lift)) {
        auto* check = new QCheckBox(text, this);
        connect(check, &QCheckBox::toggled, this, &MaximumTestStart::readChecks);
        layout()->addWidget(check);
        m_checks.push_back(check);
    }
}

void MaximumTestStart::addButtons(const TestedLift& lift)
{
    m_missing = startLabel(tr("Begins when every line is ticked."), "muted", this);
    layout()->addWidget(m_missing);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const auto add = [this, row](const QString& text, TestKind kind, bool isFirst) {
        auto* button = new common::ActionButton(m_look, text, this);
        button->setKind(isFirst ? common::ButtonKind::Primary : common::ButtonKind::Normal);
        connect(button, &QPushButton::clicked, this, [this, kind] { Q_EMIT begun(kind); });
        row->addWidget(button);
        return button;
    };
    if (!lift.reason) {
        m_single = add(tr("Test a single"), TestKind::Single, true);
    }
    m_reps = add(tr("Test three to five repetitions"), TestKind::Reps, lift.reason.has_value());
    row->addStretch(1);
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void MaximumTestStart::readChecks()
{
    const bool isReady = std::all_of(m_checks.begin(), m_checks.end(), [](const QCheckBox* check) { return check->isChecked(); });
    for (common::ActionButton* button : {m_single, m_reps}) {
        if (button != nullptr) {
            button->setEnabled(isReady);
        }
    }
    if (m_missing != nullptr) {
        m_missing->setVisible(!isReady);
    }
}

}  // namespace chalk::ui::floor
