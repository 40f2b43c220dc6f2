@echo off
rem Ferrule on the command line.
setlocal
set "FERRULE_HOME=%~dp0"
set "FERRULE_JAVA=java"
if defined JAVA_HOME set "FERRULE_JAVA=%JAVA_HOME%\bin\java"
"%FERRULE_JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true "-Dferrule.home=%FERRULE_HOME%." -jar "%FERRULE_HOME%ferrule-cli.jar" %*
exit /b %ERRORLEVEL%
