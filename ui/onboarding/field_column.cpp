#include "ui/onboarding/field_column.h"

#include "ui/common/look.h"
#include "ui/common/style_sheet.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>
#include <stdexcept>

namespace chalk::ui::onboarding {

FieldColumn::FieldColumn(const common::Look& look, QWidget* parent, double nameWidth)
    : QWidget(parent), m_look(look), m_grid(new QGridLayout(this)), m_nameWidth(nameWidth)
{
    m_grid->setContentsMargins(16, 12, 16, 16);
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(1, 1);
    connect(&look, &common::Look::changed, this, &FieldColumn::dress);
    dress();
}

void FieldColumn::dress()
{
    m_grid->setColumnMinimumWidth(0, qRound(m_look.theme().scaled(m_nameWidth)));
}

void FieldColumn::addHeading(const QString& text)
{
    auto* heading = new QLabel(text, this);
    heading->setProperty("role", QStringLiteral("caption"));
    heading->setContentsMargins(0, m_next == 0 ? 0 : 14, 0, 2);
    m_grid->addWidget(heading, m_next++, 0, 1, 2);
}

FieldColumn::Row& FieldColumn::addRow(const QString& name, QWidget* field)
{
    Row row;
    row.field = field;
    row.name = new QLabel(name, this);
    row.name->setBuddy(field);
    row.name->setWordWrap(true);
    row.word = new QLabel(this);
    row.word->setWordWrap(true);
    row.word->hide();
    if (field->accessibleName().isEmpty()) {
        field->setAccessibleName(name);
    }
    return m_rows.emplace_back(row);
}

void FieldColumn::addField(const QString& name, QWidget* field)
{
    const Row& row = addRow(name, field);
    m_grid->addWidget(row.name, m_next, 0, Qt::AlignVCenter);
    m_grid->addWidget(field, m_next++, 1, field->sizePolicy().horizontalPolicy() == QSizePolicy::Fixed ? Qt::AlignLeft : Qt::Alignment());
    m_grid->addWidget(row.word, m_next++, 1);
}

void FieldColumn::addWideField(const QString& name, QWidget* field)
{
    const Row& row = addRow(name, field);
    for (QWidget* part : {static_cast<QWidget*>(row.name), field, static_cast<QWidget*>(row.word)}) {
        m_grid->addWidget(part, m_next++, 0, 1, 2);
    }
}

void FieldColumn::addLine(QWidget* line)
{
    m_grid->addWidget(line, m_next++, 0, 1, 2);
}

FieldColumn::Row& FieldColumn::rowOf(const QWidget* field)
{
    const auto row = std::find_if(m_rows.begin(), m_rows.end(), [field](const Row& one) { return one.field == field; });
    if (row == m_rows.end()) {
        throw std::logic_error("a field that is not in the column");
    }
    return *row;
}

void FieldColumn::setFault(QWidget* field, const QString& fault)
{
    Row& row = rowOf(field);
    row.fault = fault;
    field->setProperty("invalid", !fault.isEmpty());
    common::restyle(*field);
    showWord(row);
}

void FieldColumn::setNote(QWidget* field, const QString& note)
{
    Row& row = rowOf(field);
    row.note = note;
    showWord(row);
}

void FieldColumn::showWord(const Row& row)
{
    const bool isFault = !row.fault.isEmpty();
    row.word->setText(isFault ? row.fault : row.note);
    row.word->setProperty("role", isFault ? QStringLiteral("fault") : QStringLiteral("muted"));
    common::restyle(*row.word);
    row.field->setAccessibleDescription(row.word->text());
    row.word->setVisible(!row.word->text().isEmpty() && !row.field->isHidden());
}

void FieldColumn::setFieldVisible(QWidget* field, bool isVisible)
{
    const Row& row = rowOf(field);
    field->setVisible(isVisible);
    row.name->setVisible(isVisible);
    row.word->setVisible(isVisible && !row.word->text().isEmpty());
}

}  // namespace chalk::ui::onboarding
