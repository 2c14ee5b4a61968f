#include "tests/faults/children.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <gtest/gtest.h>

#include <cstring>

int main(int argc, char** argv)
{
    // A kill loses nothing that was written, synced or not: memory does as well as a disk, and faster.
    if (!qEnvironmentVariableIsSet("TMPDIR") && QFileInfo(QStringLiteral("/dev/shm")).isWritable()) {
        qputenv("TMPDIR", "/dev/shm");
    }
    const QCoreApplication app(argc, argv);
    if (argc > 2 && std::strcmp(argv[1], "--child") == 0) {
        return chalk::faults::runChild(QCoreApplication::arguments().mid(2));
    }
    ::testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
