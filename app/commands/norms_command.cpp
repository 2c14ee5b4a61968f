#include "app/commands/norms_command.h"

#include "core/exchange/field_test_json.h"
#include "ui/common/formats.h"
#include "ui/common/norm_words.h"

#include <QJsonDocument>

namespace chalk::app {

namespace {

QString normFaultText(const exchange::JsonFault& fault)
{
    return QString::fromStdString(fault.field + ": " + fault.reason);
}

QJsonObject normJson(const screens::FieldTest& test, const screens::NormResult& result)
{
    QJsonObject object = exchange::toJson(test, result);
    object.insert(QStringLiteral("says"), ui::common::normSentence(test, result));
    return object;
}

void writeNorm(QTextStream& out, const screens::FieldTest& test, const screens::NormResult& result)
{
    out << ui::common::testName(test) << QStringLiteral(": ") << ui::common::testValueText(test, result.value) << '\n'
        << ui::common::normSentence(test, result) << '\n';
    if (result.usual.from) {
        out << QStringLiteral("Usual: ") << ui::common::normRangeText(test, result.usual) << '\n';
    }
    for (const screens::NormRemark remark : result.remarks) {
        out << ui::common::remarkSentence(remark) << '\n';
    }
    out << QStringLiteral("Source: ") << ui::common::qstring(result.source) << '\n';
}

int runNorms(const CommandContext& context)
{
    const auto text = context.readInput(context.operands.front());
    if (!text) {
        return kWrongUse;
    }
    const auto value = exchange::parseJson(*text);
    if (!value) {
        return context.refuse(normFaultText(value.error()));
    }
    const auto record = exchange::readFieldTest(*value);
    if (!record) {
        return context.refuse(normFaultText(record.error()));
    }
    const screens::NormResult result = screens::normOf(record->test, record->person);
    if (context.isJson()) {
        context.out << QJsonDocument(normJson(record->test, result)).toJson(QJsonDocument::Indented);
    } else {
        writeNorm(context.out, record->test, result);
    }
    return kDone;
}

}  // namespace

Command normsCommand()
{
    return {QStringLiteral("norms"),
            QStringLiteral("compare the result of a field test with its published norm"),
            QStringLiteral("FILE"),
            1,
            1,
            {},
            QStringLiteral("FILE is one JSON object (- for standard input) with test, age (whole years), sex (female or male; norms that are split by sex\n"
                           "need it) and the result, by test:\n"
                           "  chair_stand           stands in 30 seconds; arms_used true or false\n"
                           "  push_ups              reps; form toes or knees\n"
                           "  single_leg_stance     seconds, eyes open\n"
                           "  plank                 seconds\n"
                           "  weight_bearing_lunge  left_cm and right_cm\n"
                           "  sit_and_reach         reach_cm; zero_cm, what the scale shows at the feet\n"
                           "The answer is the class or why there is none, its range, the ages it holds for, the source, and what to mind. It is no diagnosis."),
            runNorms};
}

}  // namespace chalk::app
