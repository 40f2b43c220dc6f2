/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Case Document</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A case: what is in place, where a device must arrive, what is to be spared, what was tried. Nothing in it may tell who the patient is.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.CaseDocument#getLibraries <em>Libraries</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getRules <em>Rules</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getTechniques <em>Techniques</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getShelf <em>Shelf</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getDay <em>Day</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getAccess <em>Access</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getSystem <em>System</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getPath <em>Path</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getLesion <em>Lesion</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getBranch <em>Branch</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getDeliver <em>Deliver</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getFacts <em>Facts</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getMeasures <em>Measures</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getPatient <em>Patient</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getAim <em>Aim</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getSpent <em>Spent</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getLog <em>Log</em>}</li>
 *   <li>{@link org.ferrule.model.CaseDocument#getClosing <em>Closing</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getCaseDocument()
 * @model annotation="https://ferrule.invalid/annotation/1 suffix='.case.json' format='ferrule.case' label='Case'"
 * @generated
 */
public interface CaseDocument extends Document
{
	/**
	 * Returns the value of the '<em><b>Libraries</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device libraries, as paths relative to this document, with /.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Libraries</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Libraries()
	 * @model unique="false" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='file .devices.json' label='Device libraries'"
	 * @generated
	 */
	EList<String> getLibraries();

	/**
	 * Returns the value of the '<em><b>Rules</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The rule set, as a path relative to this document, with /.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rules</em>' attribute.
	 * @see #setRules(String)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Rules()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='file .rules.json' label='Rule set'"
	 * @generated
	 */
	String getRules();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getRules <em>Rules</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rules</em>' attribute.
	 * @see #getRules()
	 * @generated
	 */
	void setRules(String value);

	/**
	 * Returns the value of the '<em><b>Techniques</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The techniques, as a path relative to this document, with /.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Techniques</em>' attribute.
	 * @see #setTechniques(String)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Techniques()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='file .techniques.json' label='Techniques'"
	 * @generated
	 */
	String getTechniques();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getTechniques <em>Techniques</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Techniques</em>' attribute.
	 * @see #getTechniques()
	 * @generated
	 */
	void setTechniques(String value);

	/**
	 * Returns the value of the '<em><b>Shelf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The shelf, as a path relative to this document, with /; without one nothing is known of the stock.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shelf</em>' attribute.
	 * @see #setShelf(String)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Shelf()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='file .shelf.json' label='Shelf'"
	 * @generated
	 */
	String getShelf();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getShelf <em>Shelf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shelf</em>' attribute.
	 * @see #getShelf()
	 * @generated
	 */
	void setShelf(String value);

	/**
	 * Returns the value of the '<em><b>Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The day of the case, ISO 8601: year-month-day. What has expired before cannot be used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Day</em>' attribute.
	 * @see #setDay(String)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Day()
	 * @model annotation="https://ferrule.invalid/annotation/1 text='date' label='Day of the case'"
	 * @generated
	 */
	String getDay();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getDay <em>Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Day</em>' attribute.
	 * @see #getDay()
	 * @generated
	 */
	void setDay(String value);

	/**
	 * Returns the value of the '<em><b>Access</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the system enters.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Access</em>' containment reference.
	 * @see #setAccess(Access)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Access()
	 * @model containment="true"
	 * @generated
	 */
	Access getAccess();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getAccess <em>Access</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Access</em>' containment reference.
	 * @see #getAccess()
	 * @generated
	 */
	void setAccess(Access value);

	/**
	 * Returns the value of the '<em><b>System</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is in place when planning begins.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>System</em>' containment reference.
	 * @see #setSystem(SystemInPlace)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_System()
	 * @model containment="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='System in place'"
	 * @generated
	 */
	SystemInPlace getSystem();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getSystem <em>System</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>System</em>' containment reference.
	 * @see #getSystem()
	 * @generated
	 */
	void setSystem(SystemInPlace value);

	/**
	 * Returns the value of the '<em><b>Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The way from the tip of the guide catheter at the ostium to the lesion.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path</em>' containment reference.
	 * @see #setPath(VesselPath)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Path()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Vessel path'"
	 * @generated
	 */
	VesselPath getPath();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getPath <em>Path</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path</em>' containment reference.
	 * @see #getPath()
	 * @generated
	 */
	void setPath(VesselPath value);

	/**
	 * Returns the value of the '<em><b>Lesion</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lesion that a device has to reach.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lesion</em>' containment reference.
	 * @see #setLesion(Lesion)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Lesion()
	 * @model containment="true"
	 * @generated
	 */
	Lesion getLesion();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getLesion <em>Lesion</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lesion</em>' containment reference.
	 * @see #getLesion()
	 * @generated
	 */
	void setLesion(Lesion value);

	/**
	 * Returns the value of the '<em><b>Branch</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A side branch that may be used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Branch</em>' containment reference.
	 * @see #setBranch(SideBranch)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Branch()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Side branch'"
	 * @generated
	 */
	SideBranch getBranch();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getBranch <em>Branch</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Branch</em>' containment reference.
	 * @see #getBranch()
	 * @generated
	 */
	void setBranch(SideBranch value);

	/**
	 * Returns the value of the '<em><b>Deliver</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device that must be delivered in the end: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Deliver</em>' attribute.
	 * @see #setDeliver(String)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Deliver()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Device to deliver'"
	 * @generated
	 */
	String getDeliver();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getDeliver <em>Deliver</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Deliver</em>' attribute.
	 * @see #getDeliver()
	 * @generated
	 */
	void setDeliver(String value);

	/**
	 * Returns the value of the '<em><b>Facts</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.StatedFact}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What someone stated about the case.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Facts</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Facts()
	 * @model containment="true"
	 * @generated
	 */
	EList<StatedFact> getFacts();

	/**
	 * Returns the value of the '<em><b>Measures</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was seen of the lesion, for published scores.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Measures</em>' containment reference.
	 * @see #setMeasures(LesionMeasures)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Measures()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Lesion measures'"
	 * @generated
	 */
	LesionMeasures getMeasures();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getMeasures <em>Measures</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measures</em>' containment reference.
	 * @see #getMeasures()
	 * @generated
	 */
	void setMeasures(LesionMeasures value);

	/**
	 * Returns the value of the '<em><b>Patient</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Figures that limits of contrast medium need.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Patient</em>' containment reference.
	 * @see #setPatient(PatientFigures)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Patient()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Patient figures'"
	 * @generated
	 */
	PatientFigures getPatient();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getPatient <em>Patient</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Patient</em>' containment reference.
	 * @see #getPatient()
	 * @generated
	 */
	void setPatient(PatientFigures value);

	/**
	 * Returns the value of the '<em><b>Aim</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is to be spared, and what limits the plan.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Aim</em>' containment reference.
	 * @see #setAim(CaseAim)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Aim()
	 * @model containment="true" required="true"
	 * @generated
	 */
	CaseAim getAim();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getAim <em>Aim</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aim</em>' containment reference.
	 * @see #getAim()
	 * @generated
	 */
	void setAim(CaseAim value);

	/**
	 * Returns the value of the '<em><b>Spent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was used up before the log began.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spent</em>' containment reference.
	 * @see #setSpent(Costs)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Spent()
	 * @model containment="true"
	 * @generated
	 */
	Costs getSpent();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getSpent <em>Spent</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spent</em>' containment reference.
	 * @see #getSpent()
	 * @generated
	 */
	void setSpent(Costs value);

	/**
	 * Returns the value of the '<em><b>Log</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.LoggedAttempt}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was tried, in order.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Log</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Log()
	 * @model containment="true"
	 * @generated
	 */
	EList<LoggedAttempt> getLog();

	/**
	 * Returns the value of the '<em><b>Closing</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The record of a closed case, which later edits of libraries do not change.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Closing</em>' containment reference.
	 * @see #setClosing(Closing)
	 * @see org.ferrule.model.ModelPackage#getCaseDocument_Closing()
	 * @model containment="true"
	 * @generated
	 */
	Closing getClosing();

	/**
	 * Sets the value of the '{@link org.ferrule.model.CaseDocument#getClosing <em>Closing</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Closing</em>' containment reference.
	 * @see #getClosing()
	 * @generated
	 */
	void setClosing(Closing value);

} // CaseDocument
