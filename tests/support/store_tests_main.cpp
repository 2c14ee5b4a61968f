#include <QCoreApplication>
#include <QFileInfo>

#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    // Tests sync hundreds of times: memory does that at once.
    if (!qEnvironmentVariableIsSet("TMPDIR") && QFileInfo(QStringLiteral("/dev/shm")).isWritable()) {
        qputenv("TMPDIR", "/dev/shm");
    }
    const QCoreApplication app(argc, argv);
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
