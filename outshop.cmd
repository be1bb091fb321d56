@echo off
rem Runs Outshop; builds it first where that was not done yet.
rem After a change of the sources or rules, run: mvn -q -DskipTests package
setlocal
set "home=%~dp0"
set "jar=%home%target\outshop-0.1.0.jar"
if exist "%jar%" goto run
where mvn >nul 2>nul
if errorlevel 1 (
  echo outshop: the program is not built, and there is no mvn ^(Apache Maven^) to build it with 1>&2
  exit /b 2
)
echo outshop: building, once 1>&2
pushd "%home%"
call mvn -q -B -DskipTests package 1>&2
set "built=%errorlevel%"
popd
if not "%built%"=="0" (
  echo outshop: the build failed; nothing was run 1>&2
  exit /b 2
)
:run
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set "quick=-XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=3 -XX:+UseSerialGC -Xms20m -XX:-UsePerfData -XX:+IgnoreUnrecognizedVMOptions -Xlog:disable -Xlog:all=error:stderr"
rem Java's classes are kept ready in an archive, made in the background after the first command. Its name
rem holds the jar's time and size, and the Java's version where JAVA_HOME tells it; one that does not
rem fit is left alone by Java. OUTSHOP_ARCHIVE=no makes and uses none.
if /i "%OUTSHOP_ARCHIVE%"=="no" goto plain
for %%F in ("%jar%") do set "mark=%%~tF-%%~zF"
set "mark=%mark::=%"
set "mark=%mark:/=%"
set "mark=%mark:.=%"
set "mark=%mark: =%"
set "version=other"
if defined JAVA_HOME if exist "%JAVA_HOME%\release" for /f "tokens=2 delims==" %%V in ('findstr /b JAVA_RUNTIME_VERSION= "%JAVA_HOME%\release"') do set "version=%%~V"
set "folder=%home%target\archive"
set "archive=%folder%\%version%-%mark%.jsa"
if exist "%archive%" goto archived
if not exist "%folder%" mkdir "%folder%" 2>nul
if not exist "%folder%" goto plain
del /q "%folder%\%version%-*.jsa" 2>nul
start "" /b /low "%java%" %quick% "-XX:ArchiveClassesAtExit=%archive%" -cp "%jar%" outshop.cli.Rehearsal "%home%catalog-sample\plans" >nul 2>nul
:plain
"%java%" %quick% -jar "%jar%" %*
exit /b %errorlevel%
:archived
"%java%" %quick% "-XX:SharedArchiveFile=%archive%" -jar "%jar%" %*
exit /b %errorlevel%
