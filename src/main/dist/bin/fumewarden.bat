@echo off
rem Starts Fumewarden. On the first start of a version it keeps an archive of loaded classes for this machine.
rem   JAVA_HOME                 the Java 17 or later to use; otherwise the one on the path
rem   FUMEWARDEN_JAVA_OPTIONS   more options for the virtual machine, such as -Xmx4g
rem   FUMEWARDEN_ARCHIVE=off    neither makes nor uses the archive
setlocal
for %%i in ("%~dp0..") do set "HOME_DIR=%%~fi"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo Fumewarden needs Java 17 or later and found none. 1>&2
    echo Install one, or set JAVA_HOME to its folder. 1>&2
    exit /b 1
)

set "SHAPE=-XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:Tier3LoadFeedback=20 -XX:+UseSerialGC"
set "SHAPE=%SHAPE% -Dsun.reflect.inflationThreshold=1000000 -Djdk.reflect.useNativeAccessorOnly=true"
for %%c in (batch serve sweep check drill) do if "%~1"=="%%c" set "SHAPE=-XX:+UseParallelGC"
rem A batch keeps nothing of a task: with more memory it would only collect later.
if "%~1"=="batch" set "SHAPE=-XX:+UseParallelGC -Xmx1g"

set "MAIN=org.fumewarden.cli.Main"
set "SHARE="
if /i "%FUMEWARDEN_ARCHIVE%"=="off" goto start
if not defined LOCALAPPDATA goto start

rem An archive holds for one build in one folder under one Java: all are in its name.
set "JAVA_MARK=java"
for /f "tokens=3" %%v in ('""%JAVA%" -version 2^>^&1" ^| findstr /i version') do set "JAVA_MARK=%%~v"
set "BUILD="
for %%j in ("%HOME_DIR%\lib\fumewarden-*.jar") do set "BUILD=%%~nj-%%~zj-%%~tj"
set "MARK=%BUILD%-%JAVA_MARK%-%HOME_DIR%"
set "MARK=%MARK:\=_%"
set "MARK=%MARK:/=_%"
set "MARK=%MARK::=_%"
set "MARK=%MARK: =_%"
set "CACHE=%LOCALAPPDATA%\fumewarden"
set "ARCHIVE=%CACHE%\%MARK:~-150%.jsa"
if exist "%ARCHIVE%" goto share
if exist "%ARCHIVE%.none" goto start
if not exist "%CACHE%" mkdir "%CACHE%" >nul 2>&1
set "FRESH=%CACHE%\making-%RANDOM%-%RANDOM%.jsa"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable "-XX:ArchiveClassesAtExit=%FRESH%" -cp "%HOME_DIR%\lib\*" %MAIN% advise "%HOME_DIR%\examples\stainless-brackets.yaml" >nul 2>&1 <nul
if exist "%FRESH%" (move /y "%FRESH%" "%ARCHIVE%" >nul 2>&1) else (type nul >"%ARCHIVE%.none" 2>nul)
:share
if exist "%ARCHIVE%" set "SHARE="-XX:SharedArchiveFile=%ARCHIVE%""
:start
set "KEPT="
if defined LOCALAPPDATA set KEPT="-Dfumewarden.cache=%LOCALAPPDATA%\fumewarden"
"%JAVA%" %SHAPE% -Xshare:auto -Xlog:disable -Xlog:all=error:stderr %SHARE% %KEPT% "-Dfumewarden.share=%HOME_DIR%\share" %FUMEWARDEN_JAVA_OPTIONS% -cp "%HOME_DIR%\lib\*" %MAIN% %*
exit /b %ERRORLEVEL%
