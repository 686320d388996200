@echo off
rem Starts Fandown on Windows. Builds it on first use, and again when its sources have changed.
rem Simpler than the script for other systems: one build at a time, and no prepared classes.
rem Not covered by the check script, which runs on Linux.
setlocal enableextensions
set "home=%~dp0"
set "builds=%home%.build"

set "java=java.exe"
set "javac=javac.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if defined JAVA_HOME set "javac=%JAVA_HOME%\bin\javac.exe"
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo fandown: Java is missing; install a JDK 17 or newer. 1>&2
  exit /b 2
)

rem The key stands for name, size and time of every source file.
set "key="
for /f "usebackq delims=" %%k in (`powershell -NoProfile -Command "Set-Location -LiteralPath $env:home; $list = Get-ChildItem -File -Recurse pom.xml,.mvn,core\pom.xml,browser\pom.xml,app\pom.xml,core\src\main,browser\src\main,app\src\main,examples\vehicles,examples\scenarios | Sort-Object FullName | ForEach-Object { $_.FullName + ' ' + $_.Length + ' ' + $_.LastWriteTimeUtc.Ticks }; $bytes = [Text.Encoding]::UTF8.GetBytes($list -join '|'); [BitConverter]::ToString([Security.Cryptography.SHA256]::Create().ComputeHash($bytes), 0, 8)"`) do set "key=%%k"
if not defined key (
  echo fandown: PowerShell is missing; it is needed to see whether the sources have changed. 1>&2
  exit /b 2
)
if exist "%builds%\%key%\ready" goto run

"%javac%" --release 17 -version >nul 2>&1
if errorlevel 1 (
  echo fandown: A Java compiler of version 17 or newer is missing; install a JDK 17 or newer. 1>&2
  exit /b 2
)
where mvn >nul 2>&1
if errorlevel 1 (
  echo fandown: Maven is missing; install Maven 3.8.6 or newer. 1>&2
  exit /b 2
)
echo fandown: building the program, which takes a minute or two ... 1>&2
if not exist "%builds%" mkdir "%builds%"
if exist "%home%core\target\launcher" rmdir /s /q "%home%core\target\launcher"
if exist "%home%browser\target\launcher" rmdir /s /q "%home%browser\target\launcher"
if exist "%home%app\target\launcher" rmdir /s /q "%home%app\target\launcher"
pushd "%home%"
call mvn -B -ntp -pl app -am package -Dfandown.quick -Dfandown.target=target/launcher -Dmaven.test.skip=true -Denforcer.skip=true >"%builds%\build.log" 2>&1 <nul
set "result=%errorlevel%"
popd
if not "%result%"=="0" (
  powershell -NoProfile -Command "Get-Content -LiteralPath ($env:builds + '\build.log') -Tail 40" 1>&2
  echo fandown: The build failed; the whole log is in %builds%\build.log. 1>&2
  exit /b 2
)
if exist "%builds%\%key%" rmdir /s /q "%builds%\%key%"
mkdir "%builds%\%key%"
move "%home%app\target\launcher\fandown.jar" "%builds%\%key%\" >nul
move "%home%app\target\launcher\lib" "%builds%\%key%\" >nul
type nul >"%builds%\%key%\ready"
echo fandown: built. 1>&2

:run
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Dfile.encoding=UTF-8 -Djava.awt.headless=true -jar "%builds%\%key%\fandown.jar" %*
exit /b %errorlevel%
