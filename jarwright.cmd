@echo off
rem Builds jarwright if it is not built or a source is newer, then runs it in the caller's folder.
rem Needs Maven and a JDK 17 or newer; JAVA_HOME is honoured, JARWRIGHT_JAVA_OPTS adds flags for the JVM.
setlocal EnableExtensions DisableDelayedExpansion

set "home=%~dp0"
set "jar=%home%target\jarwright.jar"
set "launch=%home%target\launch"
set "get_java=Install a JDK of version 17 or newer, or set JAVA_HOME to one."

set "java="
if defined JAVA_HOME (set "java=%JAVA_HOME%\bin\java.exe") else (for %%J in (java.exe) do set "java=%%~$PATH:J")
if not defined java (
  >&2 echo jarwright: no Java found. %get_java%
  exit /b 3
)
if not exist "%java%" (
  >&2 echo jarwright: JAVA_HOME holds no bin\java.exe. %get_java%
  exit /b 3
)

rem The first compiler tier and the serial collector start fastest, and a run lasts a second or two.
rem A small heap that grows takes a third less memory than the JDK's own, and no more time.
set "flags=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms64m -Xmn32m -Xmx512m -Xshare:auto -Xlog:disable -Xlog:all=error:stderr"
if defined JARWRIGHT_JAVA_OPTS if not "%JARWRIGHT_JAVA_OPTS:-XX:+Use=%"=="%JARWRIGHT_JAVA_OPTS%" set "flags=%flags:-XX:+UseSerialGC =%"
if defined JARWRIGHT_JAVA_OPTS if not "%JARWRIGHT_JAVA_OPTS:-Xmx=%"=="%JARWRIGHT_JAVA_OPTS%" set "flags=%flags:-Xms64m -Xmn32m -Xmx512m =%"

call :look
if defined ready goto run
if not exist "%launch%\" mkdir "%launch%" 2>nul
if not exist "%launch%\" (
  >&2 echo jarwright: cannot write in "%launch%", where the program is built.
  exit /b 3
)

rem The lock is a folder, since making one succeeds for one launcher only. Five minutes without its going
rem away mean that its owner was stopped.
set /a waited=0
:lock
mkdir "%launch%\lock" 2>nul && goto locked
if %waited% equ 2 >&2 echo jarwright: waiting for another jarwright that is building...
if %waited% geq 300 rmdir "%launch%\lock" 2>nul
set /a waited+=1
ping -n 2 127.0.0.1 >nul
goto lock
:locked
call :prepare
rmdir "%launch%\lock"
if not "%status%"=="0" exit /b %status%

:run
set "share="
if exist "%launch%\%key%.ok" set share="-XX:SharedArchiveFile=%launch%\%key%.jsa"
"%java%" %flags% %share% %JARWRIGHT_JAVA_OPTS% -jar "%jar%" %*
exit /b %errorlevel%

rem Sets key, which names the class-data archive for this Java and this jar (nothing when a source is newer
rem than the jar), and ready, when that archive was made or could not be made.
:look
set "key="
set "ready="
if not exist "%jar%" exit /b 0
for /f "usebackq delims=" %%K in (`powershell -NoProfile -Command "$jar = Get-Item -LiteralPath $env:jar; $java = Get-Item -LiteralPath $env:java; $newer = 'src/main', 'templates', 'fonts', 'pom.xml' | ForEach-Object { Join-Path $env:home $_ } | Where-Object { Test-Path -LiteralPath $_ } | ForEach-Object { Get-ChildItem -Recurse -LiteralPath $_ } | Where-Object { $_.LastWriteTimeUtc -gt $jar.LastWriteTimeUtc } | Select-Object -First 1; if (-not $newer) { -join ($jar.LastWriteTimeUtc.Ticks, '-', $java.LastWriteTimeUtc.Ticks, '-', $java.Length, '-', $java.FullName.GetHashCode()) }"`) do set "key=%%K"
if not defined key exit /b 0
if exist "%launch%\%key%.ok" set "ready=yes"
if exist "%launch%\%key%.none" set "ready=yes"
exit /b 0

rem Builds and makes the archive, whichever is wanting. Sets status to the exit status so far.
:prepare
set "status=0"
set "version="
"%java%" -XshowSettings:properties -version 2>"%launch%\java.txt"
for /f "usebackq tokens=1,3" %%A in ("%launch%\java.txt") do if "%%A"=="java.specification.version" set "version=%%B"
if not defined version (
  >&2 echo jarwright: the Java at "%java%" does not start. %get_java%
  set "status=3"
  exit /b 0
)
if %version% LSS 17 (
  >&2 echo jarwright: the Java at "%java%" is version %version%. %get_java%
  set "status=3"
  exit /b 0
)
call :look
if not defined key call :build
if not "%status%"=="0" exit /b 0
if not defined ready call :archive
exit /b 0

:build
where mvn >nul 2>nul
if errorlevel 1 (
  >&2 echo jarwright: Maven is needed to build jarwright, and is not there. Install Maven 3.8 or newer.
  set "status=3"
  exit /b 0
)
set "why=first run"
if exist "%jar%" set "why=sources changed"
>&2 echo jarwright: building jarwright (%why%)...
rem In a folder of its own and dated from before the build: a source saved meanwhile counts as newer.
set "new=%launch%\build\jarwright.jar"
type nul >"%launch%\started"
pushd "%home%"
call mvn -B -q -Dmaven.test.skip -Dbuild.folder=target/launch/build package <nul >"%launch%\build.log" 2>&1
set "built=%errorlevel%"
popd
if not "%built%"=="0" (
  >&2 type "%launch%\build.log"
  >&2 echo jarwright: the build failed; what Maven said stands above.
  set "status=3"
  exit /b 0
)
powershell -NoProfile -Command "(Get-Item -LiteralPath $env:new).LastWriteTimeUtc = (Get-Item -LiteralPath (Join-Path $env:launch 'started')).LastWriteTimeUtc"
move /y "%new%" "%jar%" >nul
if errorlevel 1 (
  >&2 echo jarwright: cannot replace "%jar%". Is another jarwright running?
  set "status=3"
  exit /b 0
)
call :look
exit /b 0

rem One training run of the main job; classes it loads start from the archive afterwards. It counts once its
rem .ok stands beside it, so never a half-written one; .none says that none could be made.
:archive
if not defined key exit /b 0
del /q "%launch%\*.jsa" "%launch%\*.ok" "%launch%\*.none" 2>nul
if exist "%launch%\trial\" rmdir /s /q "%launch%\trial"
mkdir "%launch%\trial"
"%java%" %flags% "-XX:ArchiveClassesAtExit=%launch%\trial\classes.jsa" -cp "%jar%" jarwright.cli.Training "%home%samples\plum-day.yaml" "%launch%\trial" <nul >nul 2>&1
if errorlevel 1 goto none
move /y "%launch%\trial\classes.jsa" "%launch%\%key%.jsa" >nul 2>nul
if errorlevel 1 goto none
type nul >"%launch%\%key%.ok"
rmdir /s /q "%launch%\trial"
exit /b 0
:none
type nul >"%launch%\%key%.none"
rmdir /s /q "%launch%\trial"
exit /b 0
