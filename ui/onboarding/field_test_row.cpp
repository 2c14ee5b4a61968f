#include "ui/onboarding/field_test_row.h"

#include "ui/common/look.h"
#include "ui/common/norm_words.h"
#include "ui/common/segmented_choice.h"
#include "ui/common/style_sheet.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr double kResultWidth = 76;  ///< pixels at a text size of 100 %

QLabel* rowWords(const char* role, QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setProperty("role", QLatin1String(role));
    label->setWordWrap(true);
    label->hide();
    return label;
}

void showWords(QLabel& label, const QString& text)
{
    label.setText(text);
    label.setVisible(!text.isEmpty());
}

}  // namespace

FieldTestRow::FieldTestRow(const common::Look& look, const screens::FieldTest& test, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_test(test),
      m_verdict(rowWords("smallStrong", this)),
      m_detail(rowWords("muted", this)),
      m_running(rowWords("figure", this)),
      m_earlier(rowWords("secondary", this))
{
    auto* name = new QLabel(common::testName(test), this);
    name->setProperty("role", QStringLiteral("strong"));
    auto* how = rowWords("muted", this);
    showWords(*how, fieldTestHow(test));
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(name);
    words->addWidget(how);
    words->addStretch(1);
    auto* entry = new QHBoxLayout;
    entry->setSpacing(8);
    addFields(*entry);
    entry->addStretch(1);
    auto* outcome = new QVBoxLayout;
    outcome->setSpacing(3);
    outcome->addLayout(entry);
    for (QLabel* label : {m_running, m_verdict, m_detail, m_earlier}) {
        outcome->addWidget(label);
    }
    outcome->addStretch(1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(20, 12, 20, 12);
    row->setSpacing(24);
    row->addLayout(words, 2);
    row->addLayout(outcome, 3);
}

void FieldTestRow::addField(QHBoxLayout& row, const QString& caption, const QString& name)
{
    auto* field = new QLineEdit(this);
    field->setAccessibleName(QStringLiteral("%1, %2").arg(common::testName(m_test), name));
    field->setFixedWidth(qRound(m_look.theme().scaled(kResultWidth)));
    connect(&m_look, &common::Look::changed, field, [this, field] { field->setFixedWidth(qRound(m_look.theme().scaled(kResultWidth))); });
    auto* label = new QLabel(caption, this);
    label->setProperty("role", QStringLiteral("secondary"));
    row.addWidget(field);
    row.addWidget(label);
    m_fields.push_back(field);
    connect(field, &QLineEdit::textEdited, this, [this] {
        review();
        Q_EMIT typed();
    });
    connect(field, &QLineEdit::editingFinished, this, &FieldTestRow::given);
}

void FieldTestRow::addFields(QHBoxLayout& row)
{
    if (isTimed(m_test)) {
        addField(row, tr("s"), tr("seconds"));
    } else if (std::holds_alternative<screens::WeightBearingLunge>(m_test)) {
        addField(row, tr("cm left"), tr("left, cm"));
        addField(row, tr("cm right"), tr("right, cm"));
    } else if (std::holds_alternative<screens::SitAndReach>(m_test)) {
        addField(row, tr("cm reached"), tr("reach, cm"));
        addField(row, tr("cm at the feet"), tr("what the scale shows at the feet, cm"));
    } else {
        const bool isChair = std::holds_alternative<screens::ChairStand>(m_test);
        addField(row, isChair ? tr("stands") : tr("reps"), isChair ? tr("stands") : tr("reps"));
        addWays(row);
    }
}

void FieldTestRow::addWays(QHBoxLayout& row)
{
    const bool isChair = std::holds_alternative<screens::ChairStand>(m_test);
    m_way = isChair ? new common::SegmentedChoice(tr("Arms"), {{tr("Arms crossed")}, {tr("Arms used"), common::Signal::Warn}}, this)
                    : new common::SegmentedChoice(tr("Push-ups"), {{tr("Toes")}, {tr("Knees")}}, this);
    m_way->setCompact();
    m_way->setChosen(0);
    row.addWidget(m_way);
    connect(m_way, &common::SegmentedChoice::choiceMade, this, [this] {
        review();
        Q_EMIT given();
    });
}

FieldTestTyped FieldTestRow::typedNow() const
{
    return {m_fields.front()->text(), m_fields.size() > 1 ? m_fields[1]->text() : QString(), m_way != nullptr && m_way->chosen() == 1};
}

tl::expected<std::optional<screens::FieldTest>, FieldTestFault> FieldTestRow::result() const
{
    return fieldTestOf(m_test, typedNow());
}

void FieldTestRow::setResult(const std::optional<screens::FieldTest>& kept, const FieldTestPerson& person)
{
    m_person = person;
    const bool isTypedIn = !result().has_value() || std::any_of(m_fields.begin(), m_fields.end(), [](const QLineEdit* field) { return field->hasFocus(); });
    if (!isTypedIn) {
        const FieldTestTyped typed = kept ? typedOf(*kept) : FieldTestTyped();
        m_fields.front()->setText(typed.first);
        if (m_fields.size() > 1 && (kept || !std::holds_alternative<screens::SitAndReach>(m_test))) {
            m_fields[1]->setText(typed.second);
        }
        if (m_way != nullptr && kept) {
            m_way->setChosen(typed.isOther ? 1 : 0);
        }
    }
    review();
}

void FieldTestRow::suggest(const FieldTestTyped& typed)
{
    if (!m_fields.front()->text().isEmpty()) {
        return;
    }
    if (m_fields.size() > 1 && !m_fields[1]->hasFocus()) {
        m_fields[1]->setText(typed.second);
    }
    if (m_way != nullptr) {
        m_way->setChosen(typed.isOther ? 1 : 0);
    }
}

void FieldTestRow::setTime(int ms)
{
    m_fields.front()->setText(typedOf(screens::Plank{ms}).first);
    review();
    Q_EMIT given();
}

void FieldTestRow::showRunning(std::optional<int> elapsedMs)
{
    showWords(*m_running, elapsedMs ? tr("%1 s").arg(QString::number(*elapsedMs / 1000.0, 'f', 1)) : QString());
}

void FieldTestRow::setEarlier(const QStringList& lines)
{
    showWords(*m_earlier, lines.join(QLatin1Char('\n')));
}

void FieldTestRow::review()
{
    const auto result = this->result();
    const bool isWrong = !result && !result.error().isIncomplete;
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        m_fields[i]->setProperty("invalid", isWrong && result.error().field == static_cast<int>(i));
        common::restyle(*m_fields[i]);
    }
    m_verdict->setProperty("role", isWrong ? QStringLiteral("fault") : QStringLiteral("smallStrong"));
    common::restyle(*m_verdict);
    FieldTestVerdict verdict;
    if (!result) {
        verdict.headline = result.error().reason;
    } else if (*result) {
        verdict = verdictOf(**result, m_person);
    }
    showWords(*m_verdict, verdict.headline);
    showWords(*m_detail, verdict.detail);
    m_fields.front()->setAccessibleDescription(verdict.headline);
}

}  // namespace chalk::ui::onboarding
