#include "ui/common/look.h"

#include <QApplication>
#include <QByteArray>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <cstdio>

namespace {

/// Lines of the offscreen platform that say nothing about the program.
bool isNoise(const QString& message)
{
    return message.startsWith(QLatin1String("This plugin does not support")) || message.contains(QLatin1String("XDG_RUNTIME_DIR"));
}

/// A warning of Qt is a defect of ours: the running test fails and says which.
void judgeMessage(QtMsgType type, const QMessageLogContext& /*context*/, const QString& message)
{
    if (isNoise(message)) {
        return;
    }
    std::fprintf(stderr, "%s\n", qPrintable(message));
    if (type == QtWarningMsg || type == QtCriticalMsg) {
        ADD_FAILURE() << "Qt warned: " << message.toStdString();
    }
}

}  // namespace

int main(int argc, char** argv)
{
    // Before the application is made: no display, no desktop's settings, one pixel per pixel.
    const QTemporaryDir home;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_SCALE_FACTOR", "1");
    for (const char* folder : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CACHE_HOME", "XDG_RUNTIME_DIR"}) {
        qputenv(folder, home.path().toUtf8());
    }
    ::testing::InitGoogleTest(&argc, argv);
    qInstallMessageHandler(judgeMessage);
    QApplication application(argc, argv);
    if (!chalk::ui::common::loadFonts()) {
        std::fputs("the fonts are not in the program\n", stderr);
        return 1;
    }
    chalk::ui::common::applyTheme(application, chalk::ui::common::Look().theme());
    return RUN_ALL_TESTS();
}
