#include "core/store/session_code.h"

#include "core/store/statement.h"

#include <QRandomGenerator>

#include <string_view>

namespace chalk::store {

namespace {

constexpr std::string_view kCodeLetters = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
constexpr int kCodeLength = 8;
constexpr int kCodeTries = 20;

}  // namespace

std::string randomSessionCode()
{
    std::string code;
    for (int i = 0; i < kCodeLength; ++i) {
        code += kCodeLetters[QRandomGenerator::system()->bounded(static_cast<quint32>(kCodeLetters.size()))];
    }
    return code;
}

std::string freeSessionCode(Database& database, const SessionCodes& newCode)
{
    for (int i = 0; i < kCodeTries; ++i) {
        const std::string code = newCode();
        Statement taken(database, QStringLiteral("SELECT 1 FROM session WHERE code = ?"));
        if (taken.run(code) && !taken.next()) {
            return code;
        }
    }
    database.fail({StoreError::Kind::Refused, QStringLiteral("No free session code was found")});
    return {};
}

}  // namespace chalk::store
