#include "ui/common/kit_words.h"

#include <QCoreApplication>

namespace chalk::ui::common {

namespace {

QString kitText(const char* text)
{
    return QCoreApplication::translate("Kit", text);
}

}  // namespace

QString kitName(lifts::EquipmentKind kind)
{
    switch (kind) {
    case lifts::EquipmentKind::None:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Nothing"));
    case lifts::EquipmentKind::Barbell:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Barbell and plates"));
    case lifts::EquipmentKind::TrapBar:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Trap bar"));
    case lifts::EquipmentKind::Dumbbell:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Dumbbell"));
    case lifts::EquipmentKind::DumbbellPair:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Pair of dumbbells"));
    case lifts::EquipmentKind::Kettlebell:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Kettlebell"));
    case lifts::EquipmentKind::KettlebellPair:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Pair of kettlebells"));
    case lifts::EquipmentKind::Bag:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Sandbag"));
    case lifts::EquipmentKind::Stack:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Machine with a stack"));
    case lifts::EquipmentKind::AddedToBody:
        return kitText(QT_TRANSLATE_NOOP("Kit", "Bar to hang from, belt"));
    }
    return {};
}

}  // namespace chalk::ui::common
