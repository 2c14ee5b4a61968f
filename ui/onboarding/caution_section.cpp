#include "ui/onboarding/caution_section.h"

#include "core/planning/starting_plan.h"
#include "core/store/client_reader.h"
#include "core/store/client_row_json.h"
#include "core/store/client_writer.h"
#include "core/store/studio_reader.h"
#include "core/store/studio_settings.h"
#include "ui/common/action_button.h"
#include "ui/common/day_entry.h"
#include "ui/common/editor_foot.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/settling.h"
#include "ui/onboarding/field_column.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/studio_kit.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kTagCount = 14;
constexpr int kTagColumns = 3;

/// What is taken over with one key; the coach can change every word.
clients::Caution suggestedCaution(lifts::CautionTag tag)
{
    clients::Caution caution;
    caution.bodyPart = common::cautionTagName(tag).toStdString();
    caution.text = CautionSection::tr("Said in the health intake. Stay out of pain and stop where it changes.").toStdString();
    caution.shortText = CautionSection::tr("Stay out of pain.").toStdString();
    caution.tags = {tag};
    return caution;
}

bool isCovered(lifts::CautionTag tag, const std::vector<clients::Caution>& cautions)
{
    return std::any_of(cautions.begin(), cautions.end(), [tag](const clients::Caution& one) { return std::find(one.tags.begin(), one.tags.end(), tag) != one.tags.end(); });
}

void clearLayout(QLayout& layout)
{
    while (QLayoutItem* item = layout.takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

}  // namespace

CautionSection::CautionSection(const OnboardingServices& services, QWidget* parent)
    : QWidget(parent), m_services(services), m_rows(new QVBoxLayout), m_gaps(new QLabel(this)), m_editor(new FieldColumn(services.look, this))
{
    auto* head = new QHBoxLayout;
    head->setContentsMargins(16, 10, 16, 2);
    auto* title = new QLabel(tr("Cautions"), this);
    title->setProperty("role", QStringLiteral("section"));
    auto* add = new common::ActionButton(services.look, tr("Add a caution"), this);
    add->setButtonSize(common::ButtonSize::Small);
    add->setIconName(QStringLiteral("plus"));
    connect(add, &QPushButton::clicked, this, [this] { edit({}); });
    head->addWidget(title);
    head->addStretch(1);
    head->addWidget(add);
    m_gaps->setWordWrap(true);
    m_gaps->setProperty("role", QStringLiteral("fault"));
    m_gaps->setContentsMargins(16, 4, 16, 8);
    m_rows->setContentsMargins(16, 0, 16, 4);
    m_rows->setSpacing(4);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 8);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_editor);
    column->addLayout(m_rows);
    column->addWidget(m_gaps);
    buildEditor();
}

void CautionSection::buildEditor()
{
    const auto field = [this](const QString& name, const QString& hint) {
        auto* line = new QLineEdit(m_editor);
        line->setPlaceholderText(hint);
        m_editor->addField(name, line);
        connect(line, &QLineEdit::returnPressed, this, &CautionSection::accept);
        return line;
    };
    m_part = field(tr("Body part"), tr("Right hip"));
    m_text = field(tr("What to avoid"), {});
    m_short = field(tr("On the card"), tr("The same in one line"));
    m_until = field(tr("Until"), tr("Empty: until it is taken away"));
    auto* tags = new QWidget(m_editor);
    auto* grid = new QGridLayout(tags);
    grid->setContentsMargins(0, 0, 0, 0);
    for (int i = 0; i < kTagCount; ++i) {
        m_tags.push_back(new QCheckBox(common::cautionTagName(static_cast<lifts::CautionTag>(i)), tags));
        grid->addWidget(m_tags.back(), i / kTagColumns, i % kTagColumns);
    }
    m_editor->addWideField(tr("Rules out what strains"), tags);
    auto* foot = new common::EditorFoot(m_services.look, tr("Keep"), m_editor);
    connect(foot, &common::EditorFoot::keepAsked, this, &CautionSection::accept);
    connect(foot, &common::EditorFoot::leaveAsked, this, &CautionSection::closeEditor);
    m_editor->addLine(foot);
    m_editor->hide();
}

void CautionSection::setCase(const OnboardingCase& onboarding)
{
    if (onboarding.client.id != m_client) {
        m_editor->hide();
    }
    m_client = onboarding.client.id;
    m_unit = onboarding.client.unit;
    m_today = onboarding.today;
    setEnabled(onboarding.canKeepHealth());
    const auto file = store::ClientReader(m_services.database).read(m_client, m_today);
    m_cautions = file ? file->cautions : std::vector<clients::Caution>();
    const auto limits = store::StudioSettings(m_services.database).restingLimits().value_or(clients::RestingLimits());
    showCautions(onboarding.intake ? clients::outcomeOf(*onboarding.intake, limits).cautions : std::vector<lifts::CautionTag>());
}

void CautionSection::addRow(const QString& html, const QString& action, std::function<void()> does, const QString& other, std::function<void()> alsoDoes)
{
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto* text = new QLabel(common::proseHtml(html), line);
    text->setTextFormat(Qt::RichText);
    text->setWordWrap(true);
    row->addWidget(text, 1);
    const auto addButton = [&](const QString& name, std::function<void()> act) {
        auto* button = new common::ActionButton(m_services.look, name, line);
        button->setButtonSize(common::ButtonSize::Small);
        button->setAccessibleDescription(common::plainText(html));
        connect(button, &QPushButton::clicked, this, std::move(act));
        row->addWidget(button);
    };
    addButton(action, std::move(does));
    if (!other.isEmpty()) {
        addButton(other, std::move(alsoDoes));
    }
    m_rows->addWidget(line);
    line->show();
}

void CautionSection::showCautions(const std::vector<lifts::CautionTag>& suggested)
{
    clearLayout(*m_rows);
    for (const clients::Caution& caution : m_cautions) {
        const QString until = caution.until ? tr(" Until %1.").arg(common::entryOfDay(*caution.until)) : QString();
        addRow(QStringLiteral("<b>%1.</b> %2%3").arg(common::qstring(caution.bodyPart).toHtmlEscaped(), common::qstring(caution.text).toHtmlEscaped(), until),
               tr("Change"), [this, caution] { edit(caution); }, tr("End"), [this, caution] { end(caution); });
    }
    for (const lifts::CautionTag tag : suggested) {
        if (!isCovered(tag, m_cautions)) {
            addRow(tr("Suggested by the answers: <b>%1</b>").arg(common::cautionTagName(tag).toHtmlEscaped()), tr("Take over"),
                   [this, tag] { write(suggestedCaution(tag)); }, tr("Word it"), [this, tag] { edit(suggestedCaution(tag)); });
        }
    }
    m_gaps->setText(patternsWithoutExercise());
    m_gaps->setVisible(!m_gaps->text().isEmpty());
}

QString CautionSection::patternsWithoutExercise() const
{
    planning::PlanRequest request;
    request.equipment = studioKit(m_services.database, m_unit);
    for (const clients::Caution& caution : m_cautions) {
        request.cautions.insert(request.cautions.end(), caution.tags.begin(), caution.tags.end());
    }
    QStringList names;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        if (planning::allowedExercises(pattern, request, m_services.catalogue, false).empty()) {
            names.append(common::patternName(pattern).toLower());
        }
    }
    return names.isEmpty() ? QString() : tr("With these cautions and the studio’s equipment no exercise is left for: %1. The plan leaves it out.").arg(names.join(QStringLiteral(", ")));
}

void CautionSection::edit(const clients::Caution& caution)
{
    m_edited = caution;
    m_seen = caution;
    m_part->setText(common::qstring(caution.bodyPart));
    m_text->setText(common::qstring(caution.text));
    m_short->setText(common::qstring(caution.shortText));
    m_until->setText(caution.until ? common::entryOfDay(*caution.until) : QString());
    for (std::size_t i = 0; i < m_tags.size(); ++i) {
        m_tags[i]->setChecked(std::find(caution.tags.begin(), caution.tags.end(), static_cast<lifts::CautionTag>(i)) != caution.tags.end());
    }
    m_editor->setFault(m_part, {});
    m_editor->setFault(m_until, {});
    m_editor->show();
    m_part->setFocus(Qt::OtherFocusReason);
}

bool CautionSection::closeEditor()
{
    const bool wasOpen = !m_editor->isHidden();
    m_editor->hide();
    return wasOpen;
}

void CautionSection::accept()
{
    const auto until = common::dayOfEntry(m_until->text());
    const bool isUntilFaulty = !m_until->text().trimmed().isEmpty() && (!until || *until < m_today);
    m_editor->setFault(m_part, m_part->text().trimmed().isEmpty() ? tr("Which body part?") : QString());
    m_editor->setFault(m_until, isUntilFaulty ? tr("No such day, or it is past.") : QString());
    if (isUntilFaulty || m_part->text().trimmed().isEmpty()) {
        return;
    }
    m_edited.bodyPart = m_part->text().trimmed().toStdString();
    m_edited.text = m_text->text().trimmed().toStdString();
    m_edited.shortText = m_short->text().trimmed().isEmpty() ? m_edited.text : m_short->text().trimmed().toStdString();
    m_edited.until = until;
    m_edited.tags.clear();
    for (std::size_t i = 0; i < m_tags.size(); ++i) {
        if (m_tags[i]->isChecked()) {
            m_edited.tags.push_back(static_cast<lifts::CautionTag>(i));
        }
    }
    write(m_edited);
}

void CautionSection::write(const clients::Caution& caution)
{
    const auto written = common::settled(m_services.dialogs, m_services.database, store::rowJson(m_seen), [&](const common::Settling& settling) {
        const clients::Caution next = settling.merged ? store::cautionIn(*settling.merged, caution) : caution;
        return store::ClientWriter(m_services.database).saveCaution(m_client, next, m_today, store::cautionIn(*settling.seen, caution));
    });
    if (!written && written.error().kind != store::StoreError::Kind::Conflict) {
        Q_EMIT refused(written.error().message);
        return;
    }
    m_editor->hide();
    Q_EMIT saved();
}

void CautionSection::end(const clients::Caution& caution)
{
    clients::Caution past = caution;
    past.until = m_today - 1;
    const auto ended = common::settled(m_services.dialogs, m_services.database, store::rowJson(caution), [&](const common::Settling& settling) {
        store::ClientWriter writer(m_services.database);
        const clients::Caution seen = store::cautionIn(*settling.seen, caution);
        const bool isMineWhole = !settling.merged && seen != caution;
        return isMineWhole ? writer.saveCaution(m_client, past, m_today, seen).map([](base::CautionId) {}) : writer.endCaution(caution.id, m_today, seen);
    });
    if (!ended && ended.error().kind != store::StoreError::Kind::Conflict) {
        Q_EMIT refused(ended.error().message);
        return;
    }
    Q_EMIT saved();
}

}  // namespace chalk::ui::onboarding
