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
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -jar "%jar%" %*
exit /b %errorlevel%
