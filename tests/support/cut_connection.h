#pragma once

#include <QString>
#include <QtGlobal>

#include <algorithm>
#include <array>

namespace chalk::tests {

/// While one lives, what Qt warns of a connection that is cut under it is no failure of the test.
class CutConnection {
public:
    CutConnection() { before() = qInstallMessageHandler(passOnButCuts); }
    ~CutConnection()
    {
        qInstallMessageHandler(before());
        before() = nullptr;
    }
    CutConnection(const CutConnection&) = delete;
    CutConnection& operator=(const CutConnection&) = delete;
    CutConnection(CutConnection&&) = delete;
    CutConnection& operator=(CutConnection&&) = delete;

private:
    /// Qt's handler is a plain function, so the one that it passes on to stands here.
    static QtMessageHandler& before()
    {
        static QtMessageHandler handler = nullptr;
        return handler;
    }

    static bool isOfACut(const QString& message)
    {
        // The last is of a statement that was prepared when the server went.
        static constexpr std::array<const char*, 3> kOfCuts{"QSocketNotifier: Invalid socket", "database not open", "Unable to free statement"};
        return std::any_of(kOfCuts.begin(), kOfCuts.end(), [&message](const char* words) { return message.contains(QLatin1String(words)); });
    }

    static void passOnButCuts(QtMsgType type, const QMessageLogContext& context, const QString& message)
    {
        if (!isOfACut(message) && before() != nullptr) {
            before()(type, context, message);
        }
    }
};

}  // namespace chalk::tests
