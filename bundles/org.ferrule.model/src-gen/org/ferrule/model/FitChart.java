/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fit Chart</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A saved question: which outer and inner devices, under which conditions and rules, for whom, on what paper.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.FitChart#getAudience <em>Audience</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getAuthor <em>Author</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getLibraries <em>Libraries</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getRules <em>Rules</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getConditions <em>Conditions</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getPath <em>Path</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getLesion <em>Lesion</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getPaper <em>Paper</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getFootnotes <em>Footnotes</em>}</li>
 *   <li>{@link org.ferrule.model.FitChart#getSignOff <em>Sign Off</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getFitChart()
 * @model annotation="https://ferrule.invalid/annotation/1 suffix='.chart.json' format='ferrule.chart'"
 * @generated
 */
public interface FitChart extends Document
{
	/**
	 * Returns the value of the '<em><b>Audience</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whom the chart is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Audience</em>' attribute.
	 * @see #setAudience(String)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Audience()
	 * @model
	 * @generated
	 */
	String getAudience();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getAudience <em>Audience</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Audience</em>' attribute.
	 * @see #getAudience()
	 * @generated
	 */
	void setAudience(String value);

	/**
	 * Returns the value of the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who is answerable for the chart: a role or initials.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Author</em>' attribute.
	 * @see #setAuthor(String)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Author()
	 * @model
	 * @generated
	 */
	String getAuthor();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getAuthor <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Author</em>' attribute.
	 * @see #getAuthor()
	 * @generated
	 */
	void setAuthor(String value);

	/**
	 * Returns the value of the '<em><b>Libraries</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device libraries, as paths relative to this document, with /.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Libraries</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getFitChart_Libraries()
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
	 * @see org.ferrule.model.ModelPackage#getFitChart_Rules()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='file .rules.json' label='Rule set'"
	 * @generated
	 */
	String getRules();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getRules <em>Rules</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rules</em>' attribute.
	 * @see #getRules()
	 * @generated
	 */
	void setRules(String value);

	/**
	 * Returns the value of the '<em><b>Outer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The outer devices.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outer</em>' containment reference.
	 * @see #setOuter(Axis)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Outer()
	 * @model containment="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Outer devices'"
	 * @generated
	 */
	Axis getOuter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getOuter <em>Outer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outer</em>' containment reference.
	 * @see #getOuter()
	 * @generated
	 */
	void setOuter(Axis value);

	/**
	 * Returns the value of the '<em><b>Inner</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The inner devices.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inner</em>' containment reference.
	 * @see #setInner(Axis)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Inner()
	 * @model containment="true" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Inner devices'"
	 * @generated
	 */
	Axis getInner();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getInner <em>Inner</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inner</em>' containment reference.
	 * @see #getInner()
	 * @generated
	 */
	void setInner(Axis value);

	/**
	 * Returns the value of the '<em><b>Conditions</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The conditions of the passage.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Conditions</em>' containment reference.
	 * @see #setConditions(Conditions)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Conditions()
	 * @model containment="true"
	 * @generated
	 */
	Conditions getConditions();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getConditions <em>Conditions</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conditions</em>' containment reference.
	 * @see #getConditions()
	 * @generated
	 */
	void setConditions(Conditions value);

	/**
	 * Returns the value of the '<em><b>Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The way from the ostium to the lesion.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Path</em>' containment reference.
	 * @see #setPath(VesselPath)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Path()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Vessel path'"
	 * @generated
	 */
	VesselPath getPath();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getPath <em>Path</em>}' containment reference.
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
	 * The lesion that the inner device has to reach.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lesion</em>' containment reference.
	 * @see #setLesion(Lesion)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Lesion()
	 * @model containment="true"
	 * @generated
	 */
	Lesion getLesion();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getLesion <em>Lesion</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lesion</em>' containment reference.
	 * @see #getLesion()
	 * @generated
	 */
	void setLesion(Lesion value);

	/**
	 * Returns the value of the '<em><b>Paper</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the chart is printed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Paper</em>' containment reference.
	 * @see #setPaper(Paper)
	 * @see org.ferrule.model.ModelPackage#getFitChart_Paper()
	 * @model containment="true"
	 * @generated
	 */
	Paper getPaper();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getPaper <em>Paper</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paper</em>' containment reference.
	 * @see #getPaper()
	 * @generated
	 */
	void setPaper(Paper value);

	/**
	 * Returns the value of the '<em><b>Footnotes</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The footnotes, one a line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Footnotes</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getFitChart_Footnotes()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getFootnotes();

	/**
	 * Returns the value of the '<em><b>Sign Off</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * That somebody has looked at every verdict and answers for them, and what they were then.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sign Off</em>' containment reference.
	 * @see #setSignOff(SignOff)
	 * @see org.ferrule.model.ModelPackage#getFitChart_SignOff()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Sign-off'"
	 * @generated
	 */
	SignOff getSignOff();

	/**
	 * Sets the value of the '{@link org.ferrule.model.FitChart#getSignOff <em>Sign Off</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sign Off</em>' containment reference.
	 * @see #getSignOff()
	 * @generated
	 */
	void setSignOff(SignOff value);

} // FitChart
