#include "ui/people/columns_form.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/people/import_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace chalk::ui::people {

namespace {

constexpr std::array kEncodings{exchange::TextEncoding::Utf8, exchange::TextEncoding::Utf16Little, exchange::TextEncoding::Utf16Big, exchange::TextEncoding::Windows1252};
constexpr std::array<char, 4> kSeparators{',', ';', '\t', '|'};
constexpr std::array kOrders{tables::DateOrder::Ymd, tables::DateOrder::Dmy, tables::DateOrder::Mdy};
constexpr int kCellsShown = 3;

template <class Values, class Value>
int placeIn(const Values& values, const Value& value)
{
    return static_cast<int>(std::find(values.begin(), values.end(), value) - values.begin());
}

QLabel* secondaryLabel(const QString& text, QWidget* parent)
{
    auto* label = new QLabel(text, parent);
    label->setProperty("role", QStringLiteral("secondary"));
    label->setTextFormat(Qt::PlainText);
    return label;
}

/// The first cells of a column, as they stand.
QString firstCells(const exchange::TableFile& file, std::size_t column)
{
    QStringList cells;
    for (const auto& row : file.sample) {
        if (column < row.size() && !row[column].empty() && cells.size() < kCellsShown) {
            cells.append(common::qstring(row[column]).simplified().left(28));
        }
    }
    return cells.join(QStringLiteral(" · "));
}

}  // namespace

ColumnsForm::ColumnsForm(const common::Look& look, ImportDesk& desk, QWidget* parent) : QWidget(parent), m_look(look), m_desk(desk), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
}

void ColumnsForm::refresh()
{
    if (m_desk.inspections() == m_shown || m_desk.isBusy()) {
        return showNotTaken();
    }
    m_shown = m_desk.inspections();
    const QString focused = focusWidget() == nullptr ? QString() : focusWidget()->accessibleName();
    if (m_files != nullptr) {
        m_files->hide();
        m_files->deleteLater();
    }
    m_notTaken.clear();
    m_files = new QWidget(this);
    auto* column = new QVBoxLayout(m_files);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    m_column->addWidget(m_files);
    for (std::size_t i = 0; i < m_desk.files().size(); ++i) {
        addFile(i);
    }
    column->addStretch(1);
    showNotTaken();
    m_files->show();  // at once, so that the focus can go into it
    const auto boxes = m_files->findChildren<QComboBox*>();
    const auto same = std::find_if(boxes.begin(), boxes.end(), [&focused](const QComboBox* box) { return box->accessibleName() == focused; });
    if (!focused.isEmpty() && same != boxes.end()) {
        (*same)->setFocus(Qt::OtherFocusReason);
    }
}

void ColumnsForm::showNotTaken()
{
    for (std::size_t i = 0; i < m_notTaken.size() && i < m_desk.files().size(); ++i) {
        const QString words = leftOutText(m_desk.files()[i].file, m_desk.files()[i].layout);
        m_notTaken[i]->setText(words);
        m_notTaken[i]->setVisible(!words.isEmpty());
    }
}

void ColumnsForm::addFile(std::size_t index)
{
    const ImportFile& file = m_desk.files()[index];
    auto* panel = new common::Panel(m_look, m_files);
    const bool areCards = file.file.kind == exchange::TableKind::Cards;
    const QString count = (areCards ? tr("vCards: %1") : tr("rows: %1")).arg(file.file.records);
    panel->setTitle(file.name, file.isRecalled ? tr("%1, read as last time").arg(count) : count);
    m_files->layout()->addWidget(panel);
    addReading(index, *panel->body());
    if (file.file.kind == exchange::TableKind::Table) {
        addColumns(index, *panel->body());
    }
}

QComboBox* ColumnsForm::choice(const QString& name, const QStringList& items, int current)
{
    auto* box = new QComboBox(m_files);
    box->setAccessibleName(name);
    box->addItems(items);
    box->setCurrentIndex(current);
    return box;
}

void ColumnsForm::addReading(std::size_t index, QVBoxLayout& body)
{
    const ImportFile& file = m_desk.files()[index];
    auto* row = new QHBoxLayout;
    row->setContentsMargins(18, 12, 18, 12);
    row->setSpacing(10);
    QStringList encodings;
    for (const auto encoding : kEncodings) {
        encodings.append(encodingName(encoding));
    }
    QComboBox* encoding = choice(tr("Encoding"), encodings, placeIn(kEncodings, file.file.encoding));
    connect(encoding, &QComboBox::activated, this, [this, index](int chosen) {
        exchange::TableWishes wishes = m_desk.files()[index].wishes;
        wishes.encoding = kEncodings[static_cast<std::size_t>(chosen)];
        m_desk.overrule(index, wishes);
    });
    row->addWidget(encoding);
    if (file.file.kind == exchange::TableKind::Table) {
        QComboBox* separator = choice(tr("Separator"), {tr("Comma"), tr("Semicolon"), tr("Tab"), tr("Bar")}, placeIn(kSeparators, file.file.separator));
        QComboBox* days = choice(tr("Order of days"), {dateOrderName(kOrders[0]), dateOrderName(kOrders[1]), dateOrderName(kOrders[2])}, placeIn(kOrders, file.layout.days));
        QComboBox* sign = choice(tr("Decimal sign"), {tr("Decimal point"), tr("Decimal comma")}, static_cast<int>(file.layout.decimals));
        QComboBox* unit = choice(tr("Unit of loads"), {QStringLiteral("kg"), QStringLiteral("lb")}, static_cast<int>(file.layout.unit));
        connect(separator, &QComboBox::activated, this, [this, index](int chosen) {
            exchange::TableWishes wishes = m_desk.files()[index].wishes;
            wishes.separator = kSeparators[static_cast<std::size_t>(chosen)];
            m_desk.overrule(index, wishes);
        });
        const auto change = [this, index, days, sign, unit] {
            tables::TableLayout layout = m_desk.files()[index].layout;
            layout.days = kOrders[static_cast<std::size_t>(days->currentIndex())];
            layout.decimals = static_cast<tables::DecimalSign>(sign->currentIndex());
            layout.unit = static_cast<base::MassUnit>(unit->currentIndex());
            m_desk.setLayout(index, layout);
        };
        for (QComboBox* box : {separator, days, sign, unit}) {
            row->addWidget(box);
        }
        for (QComboBox* box : {days, sign, unit}) {
            connect(box, &QComboBox::activated, this, change);
        }
    }
    row->addStretch(1);
    body.addLayout(row);
    auto* reading = secondaryLabel(tr("Detected: %1").arg(readingText(file.file, file.file.layout)), m_files);
    reading->setWordWrap(true);
    reading->setContentsMargins(18, 0, 18, 12);
    body.addWidget(reading);
    QLabel* notTaken = secondaryLabel({}, m_files);
    notTaken->setWordWrap(true);
    notTaken->setContentsMargins(18, 0, 18, 12);
    body.addWidget(notTaken);
    m_notTaken.push_back(notTaken);
}

void ColumnsForm::addColumns(std::size_t index, QVBoxLayout& body)
{
    const ImportFile& file = m_desk.files()[index];
    QStringList fields{tr("Left out")};
    for (int i = 0; i < tables::kFields; ++i) {
        fields.append(fieldName(static_cast<tables::Field>(i)));
    }
    auto* grid = new QGridLayout;
    grid->setContentsMargins(18, 0, 18, 14);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(6);
    for (std::size_t i = 0; i < file.file.headings.size(); ++i) {
        const QString heading = common::qstring(file.file.headings[i]);
        auto* name = new QLabel(heading.simplified().left(40), m_files);
        name->setTextFormat(Qt::PlainText);
        name->setProperty("role", QStringLiteral("strong"));
        const auto field = file.layout.columns[i];
        QComboBox* box = choice(tr("What the column %1 says").arg(heading), fields, field ? static_cast<int>(*field) + 1 : 0);
        connect(box, &QComboBox::activated, this, [this, index, i](int chosen) {
            tables::TableLayout layout = m_desk.files()[index].layout;
            layout.columns[i] = chosen == 0 ? std::nullopt : std::optional(static_cast<tables::Field>(chosen - 1));
            const bool isMass = layout.columns[i] == tables::Field::Load || layout.columns[i] == tables::Field::BodyMass;
            layout.columnUnits[i] = isMass ? tables::unitInHeading(m_desk.files()[index].file.headings[i]) : std::nullopt;
            m_desk.setLayout(index, layout);
        });
        const int row = static_cast<int>(i);
        grid->addWidget(name, row, 0);
        grid->addWidget(box, row, 1);
        grid->addWidget(secondaryLabel(firstCells(file.file, i), m_files), row, 2);
    }
    grid->setColumnStretch(2, 1);
    body.addLayout(grid);
}

}  // namespace chalk::ui::people
