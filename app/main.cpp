#include <QCoreApplication>

#include <cstdio>

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    std::puts("chalkrung 0.1.0");
    return 0;
}
