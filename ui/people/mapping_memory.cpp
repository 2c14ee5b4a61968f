#include "ui/people/mapping_memory.h"

#include <QCryptographicHash>
#include <QSettings>
#include <QStringList>

namespace chalk::ui::people {

namespace {

QString placeOf(const exchange::TableFile& file)
{
    const QByteArray hash = QCryptographicHash::hash(QByteArray::fromStdString(file.signature()), QCryptographicHash::Sha256);
    return QStringLiteral("import/") + QString::fromLatin1(hash.toHex().left(16));
}

QString textOfKey(std::string_view key)
{
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

}  // namespace

bool recallMapping(QSettings& settings, const exchange::TableFile& file, tables::TableLayout& layout)
{
    const QStringList parts = settings.value(placeOf(file)).toStringList();
    if (parts.size() != static_cast<qsizetype>(layout.columns.size()) + 3) {
        return false;
    }
    for (std::size_t i = 0; i < layout.columns.size(); ++i) {
        layout.columns[i] = tables::fieldOf(parts[static_cast<qsizetype>(i) + 3].toStdString());
        const bool isMass = layout.columns[i] == tables::Field::Load || layout.columns[i] == tables::Field::BodyMass;
        layout.columnUnits[i] = isMass ? tables::unitInHeading(file.headings[i]) : std::nullopt;
    }
    layout.days = tables::dateOrderOf(parts[0].toStdString()).value_or(layout.days);
    layout.decimals = tables::decimalSignOf(parts[1].toStdString()).value_or(layout.decimals);
    layout.unit = tables::unitOfWord(parts[2].toStdString()).value_or(layout.unit);
    return true;
}

void rememberMapping(QSettings& settings, const exchange::TableFile& file, const tables::TableLayout& layout)
{
    QStringList parts{textOfKey(keyOf(layout.days)), textOfKey(keyOf(layout.decimals)), layout.unit == base::MassUnit::Kilogram ? QStringLiteral("kg") : QStringLiteral("lb")};
    for (const auto& field : layout.columns) {
        parts.append(field ? textOfKey(keyOf(*field)) : QStringLiteral("-"));
    }
    settings.setValue(placeOf(file), parts);
}

}  // namespace chalk::ui::people
