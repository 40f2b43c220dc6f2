/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Patient Figures</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Figures of the patient that limits of contrast medium need. Never a name, a number or a date of birth.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.PatientFigures#getAge <em>Age</em>}</li>
 *   <li>{@link org.ferrule.model.PatientFigures#getWeight <em>Weight</em>}</li>
 *   <li>{@link org.ferrule.model.PatientFigures#getCreatinine <em>Creatinine</em>}</li>
 *   <li>{@link org.ferrule.model.PatientFigures#getSex <em>Sex</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getPatientFigures()
 * @model
 * @generated
 */
public interface PatientFigures extends Element
{
	/**
	 * Returns the value of the '<em><b>Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Age in whole years.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Age</em>' attribute.
	 * @see #setAge(Integer)
	 * @see org.ferrule.model.ModelPackage#getPatientFigures_Age()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Age (years)'"
	 * @generated
	 */
	Integer getAge();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PatientFigures#getAge <em>Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Age</em>' attribute.
	 * @see #getAge()
	 * @generated
	 */
	void setAge(Integer value);

	/**
	 * Returns the value of the '<em><b>Weight</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Body weight with its unit: kg or lb.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weight</em>' attribute.
	 * @see #setWeight(String)
	 * @see org.ferrule.model.ModelPackage#getPatientFigures_Weight()
	 * @model
	 * @generated
	 */
	String getWeight();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PatientFigures#getWeight <em>Weight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weight</em>' attribute.
	 * @see #getWeight()
	 * @generated
	 */
	void setWeight(String value);

	/**
	 * Returns the value of the '<em><b>Creatinine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Serum creatinine with its unit: mg/dL or umol/L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Creatinine</em>' attribute.
	 * @see #setCreatinine(String)
	 * @see org.ferrule.model.ModelPackage#getPatientFigures_Creatinine()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Serum creatinine'"
	 * @generated
	 */
	String getCreatinine();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PatientFigures#getCreatinine <em>Creatinine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Creatinine</em>' attribute.
	 * @see #getCreatinine()
	 * @generated
	 */
	void setCreatinine(String value);

	/**
	 * Returns the value of the '<em><b>Sex</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.Sex}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The sex, for which the formula of the clearance has a factor.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sex</em>' attribute.
	 * @see org.ferrule.model.Sex
	 * @see #isSetSex()
	 * @see #unsetSex()
	 * @see #setSex(Sex)
	 * @see org.ferrule.model.ModelPackage#getPatientFigures_Sex()
	 * @model unsettable="true"
	 * @generated
	 */
	Sex getSex();

	/**
	 * Sets the value of the '{@link org.ferrule.model.PatientFigures#getSex <em>Sex</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sex</em>' attribute.
	 * @see org.ferrule.model.Sex
	 * @see #isSetSex()
	 * @see #unsetSex()
	 * @see #getSex()
	 * @generated
	 */
	void setSex(Sex value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.PatientFigures#getSex <em>Sex</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetSex()
	 * @see #getSex()
	 * @see #setSex(Sex)
	 * @generated
	 */
	void unsetSex();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.PatientFigures#getSex <em>Sex</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Sex</em>' attribute is set.
	 * @see #unsetSex()
	 * @see #getSex()
	 * @see #setSex(Sex)
	 * @generated
	 */
	boolean isSetSex();

} // PatientFigures
