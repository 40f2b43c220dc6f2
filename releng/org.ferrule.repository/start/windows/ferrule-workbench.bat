@echo off
rem The Ferrule workbench: ferrule-workbench [FOLDER]
setlocal
set "FERRULE_HOME=%~dp0"
set "FERRULE_JAVA=javaw"
if defined JAVA_HOME set "FERRULE_JAVA=%JAVA_HOME%\bin\javaw"
if not defined FERRULE_WORKSPACE set "FERRULE_WORKSPACE=%APPDATA%\Ferrule\workspace"
set "FERRULE_FOLDER="
if not "%~1"=="" set FERRULE_FOLDER="%~f1"
for %%f in ("%FERRULE_HOME%plugins\org.eclipse.equinox.launcher_*.jar") do set "FERRULE_LAUNCHER=%%f"
start "Ferrule" "%FERRULE_JAVA%" "@%FERRULE_HOME%workbench.options" "-Dferrule.home=%FERRULE_HOME%." "-Djava.util.logging.config.file=%FERRULE_HOME%logging.properties" -jar "%FERRULE_LAUNCHER%" -data "%FERRULE_WORKSPACE%" %FERRULE_FOLDER%
